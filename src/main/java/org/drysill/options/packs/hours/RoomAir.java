package org.drysill.options.packs.hours;

/**
 * What the content of its zone makes of the vapour of a room in a sample: pi = po + c·v, never more
 * than saturation.
 *
 * <pre>po outdoors,  c = Δp·x / v(today)</pre>
 *
 * <p>Δp likely excess today, x by what it is more in the sample. Where a zone holds nothing today
 * its room keeps its excess, which is then part of po.
 */
final class RoomAir {
  /** po [Pa], and the most of each half day. */
  final double[] outdoorPa;

  final double[] moistest;

  /** c [Pa/(kg/m³)], and the most of each half day. */
  final double[] perContent;

  final double[] most;

  /** Means of months of both. */
  final double[] meanOutdoorPa;

  final double[] meanPerContent;

  RoomAir(
      RingYear year, SampleYear.Outdoors outdoors, double[] excess, double level, double[] today) {
    perContent = new double[excess.length];
    if (today[0] > 0) {
      for (int i = 0; i < excess.length; i++) {
        perContent[i] = level * excess[i] / today[i];
      }
      outdoorPa = outdoors.vapourPa;
      moistest = outdoors.moistest;
      meanOutdoorPa = outdoors.mean;
    } else {
      outdoorPa = outdoors.vapourPa.clone();
      for (int i = 0; i < excess.length; i++) {
        outdoorPa[i] += level * excess[i];
      }
      moistest = RingYear.most(outdoorPa);
      meanOutdoorPa = year.means(outdoorPa);
    }
    most = RingYear.most(perContent);
    meanPerContent = year.means(perContent);
  }
}
