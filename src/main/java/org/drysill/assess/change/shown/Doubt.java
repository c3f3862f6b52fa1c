package org.drysill.assess.change.shown;

/** Why a change is not shown. */
public enum Doubt {
  /** Outdoor air was not read with the rooms at both visits. */
  OUTDOORS_NOT_READ("outdoors not read"),
  /** Outdoor air of the two visits is too far apart. */
  WEATHER_UNLIKE("weather too unlike"),
  /** It was too warm outdoors for a home to be heated. */
  TOO_WARM("too warm outdoors"),
  /** A log is too short, or has too many gaps. */
  TOO_SHORT("log too short"),
  /** It was there at one visit only. */
  AT_ONE_VISIT("at one visit only"),
  /** It was not measured at both visits. */
  NOT_MEASURED("not measured twice"),
  /** The difference is within the errors of both visits together. */
  WITHIN_ERROR("within the error");

  private final String words;

  Doubt(String words) {
    this.words = words;
  }

  /** In two or three words, for a table. */
  public String words() {
    return words;
  }
}
