package org.drysill.survey.photo;

/**
 * A photograph as it can be printed: upright, no finer than paper shows, a JPEG file without
 * metadata.
 */
public final class Picture {
  /** The widest that a report prints one [mm]. */
  public static final int WIDTH_MM = 82;

  /** The highest that a report prints one [mm]. */
  public static final int HEIGHT_MM = 64;

  /** What the eye can tell apart on paper [dots per inch]. */
  private static final int DOTS_PER_INCH = 200;

  /** A picture with few dots is not blown up beyond this [dots per inch]. */
  private static final int COARSEST = 72;

  private static final double MM_PER_INCH = 25.4;

  private final int width;
  private final int height;
  private final byte[] jpeg;

  Picture(int width, int height, byte[] jpeg) {
    this.width = width;
    this.height = height;
    this.jpeg = jpeg.clone();
  }

  /** The JPEG file. */
  public byte[] jpeg() {
    return jpeg.clone();
  }

  /** Its width in print [mm]. */
  public double widthMm() {
    return width * mmPerDot();
  }

  /** Its height in print [mm]. */
  public double heightMm() {
    return height * mmPerDot();
  }

  private double mmPerDot() {
    double fitting = Math.min((double) WIDTH_MM / width, (double) HEIGHT_MM / height);
    return Math.min(fitting, MM_PER_INCH / COARSEST);
  }

  /** By how much a picture of so many dots is made smaller, 1 for not at all. */
  static double reduction(int width, int height) {
    return Math.max(1, Math.max(width / dots(WIDTH_MM), height / dots(HEIGHT_MM)));
  }

  private static double dots(int mm) {
    return Math.floor(mm / MM_PER_INCH * DOTS_PER_INCH);
  }
}
