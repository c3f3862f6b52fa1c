package org.drysill.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drysill.report.block.Block;
import org.drysill.report.block.Entries;
import org.drysill.report.block.Entry;
import org.drysill.report.block.Prose;
import org.drysill.report.block.Section;
import org.drysill.report.evidence.FilesInside;
import org.drysill.report.subject.Provenance;

/** From what and by what these pages were made, with the digests of the files. */
final class RecordSection implements BriefChapter {
  @Override
  public Optional<Section> write(BriefDesk desk) {
    Provenance provenance = desk.subject().provenance();
    boolean shared = desk.subject().file().shared();
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Prose(List.of(), "", "", desk.say(shared ? "record.shared" : "record.whole")));
    List<Entry> facts = new ArrayList<>();
    facts.add(entry(desk.say("record.program"), provenance.program() + " " + provenance.version()));
    facts.add(entry(desk.say("record.rules"), provenance.ruleSet()));
    facts.add(
        entry(
            desk.say("record.data"),
            desk.say(
                "record.files",
                Integer.toString(provenance.data().files()),
                grouped(provenance.data().sha256()))));
    provenance.inputs().forEach(i -> facts.add(fact(desk, i, shared)));
    provenance
        .results()
        .ifPresent(
            digest ->
                facts.add(
                    entry(
                        FilesInside.nameOfResults(
                            provenance.inputs().stream().map(Provenance.Input::name).toList()),
                        desk.say("record.results", grouped(digest)))));
    blocks.add(new Entries("", facts, ""));
    return Optional.of(
        new Section("record", desk.say("record.heading"), desk.say("record.running"), false, blocks)
            .compactly());
  }

  private static Entry entry(String name, String text) {
    return new Entry(name + ":", text, "");
  }

  private static Entry fact(BriefDesk desk, Provenance.Input input, boolean shared) {
    String role = desk.terms().word("role", input.role());
    return entry(
        input.name(),
        desk.say(
            input.inside() || shared ? "record.inside" : "record.outside",
            role,
            grouped(input.sha256())));
  }

  /** Eight digits at a time, as they are compared by eye. */
  private static String grouped(String digest) {
    return digest.replaceAll("(.{8})(?=.)", "$1 ");
  }
}
