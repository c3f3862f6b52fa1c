package org.drysill.report.sign;

import java.io.IOException;
import java.security.cert.CertificateEncodingException;
import org.bouncycastle.asn1.DERSet;
import org.bouncycastle.asn1.cms.Attribute;
import org.bouncycastle.asn1.cms.AttributeTable;
import org.bouncycastle.asn1.cms.CMSAttributes;
import org.bouncycastle.asn1.ess.ESSCertIDv2;
import org.bouncycastle.asn1.ess.SigningCertificateV2;
import org.bouncycastle.asn1.pkcs.PKCSObjectIdentifiers;
import org.bouncycastle.cert.jcajce.JcaCertStore;
import org.bouncycastle.cert.jcajce.JcaX509CertificateHolder;
import org.bouncycastle.cms.CMSAttributeTableGenerator;
import org.bouncycastle.cms.CMSException;
import org.bouncycastle.cms.CMSProcessableByteArray;
import org.bouncycastle.cms.CMSSignedDataGenerator;
import org.bouncycastle.cms.DefaultSignedAttributeTableGenerator;
import org.bouncycastle.cms.jcajce.JcaSignerInfoGeneratorBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.operator.jcajce.JcaDigestCalculatorProviderBuilder;

/**
 * The signature itself: detached CMS (RFC 5652) with the signed attributes of CAdES that the
 * baseline of PAdES asks for: type of the content, its digest, and the digest of the signing
 * certificate (RFC 5035). The time stands in the PDF and not here, as ETSI EN 319 142-1 asks.
 */
final class Cms {
  private Cms() {}

  static byte[] detached(byte[] content, SigningKey key) throws KeyRefused {
    try {
      CMSSignedDataGenerator generator = new CMSSignedDataGenerator();
      generator.addSignerInfoGenerator(
          new JcaSignerInfoGeneratorBuilder(new JcaDigestCalculatorProviderBuilder().build())
              .setSignedAttributeGenerator(attributes(key))
              .build(
                  new JcaContentSignerBuilder(key.algorithm()).build(key.key()),
                  new JcaX509CertificateHolder(key.own())));
      generator.addCertificates(new JcaCertStore(key.chain()));
      return generator.generate(new CMSProcessableByteArray(content), false).getEncoded("DER");
    } catch (OperatorCreationException
        | CertificateEncodingException
        | CMSException
        | IOException failed) {
      throw new KeyRefused("cannot sign: " + failed.getMessage());
    }
  }

  private static CMSAttributeTableGenerator attributes(SigningKey key)
      throws CertificateEncodingException {
    ESSCertIDv2 certificate = new ESSCertIDv2(Certificates.digest(key.own()));
    Attribute signedBy =
        new Attribute(
            PKCSObjectIdentifiers.id_aa_signingCertificateV2,
            new DERSet(new SigningCertificateV2(certificate)));
    CMSAttributeTableGenerator all =
        new DefaultSignedAttributeTableGenerator(new AttributeTable(new DERSet(signedBy)));
    return parameters -> all.getAttributes(parameters).remove(CMSAttributes.signingTime);
  }
}
