package org.drysill.survey.check;

import static org.drysill.yaml.Problem.Severity.ERROR;
import static org.drysill.yaml.Problem.Severity.WARNING;

import org.drysill.yaml.Problem.Severity;
import org.drysill.yaml.ProblemCode;

/** What can be wrong with a survey although each of its values is right by itself. */
public enum SurveyCode implements ProblemCode {
  /** A door, an appliance. */
  NO_SUCH_ROOM("S001", ERROR, "A room that is not in the survey"),
  /** From a room to the same room. */
  DOOR_TO_ITSELF("S002", ERROR, "A door that leads back into its own room"),
  /** The other half of a pair. */
  NO_SUCH_FAN("S003", ERROR, "A fan that is not in the survey"),
  /** One-sided, with itself, or of another kind. */
  WRONG_PAIR("S004", ERROR, "Two units that cannot alternate with each other"),
  /** Referred to, but not listed under the visit. */
  NO_SUCH_INSTRUMENT("S005", ERROR, "An instrument that is not listed"),
  /** Readings could not tell them apart. */
  INSTRUMENT_TWICE("S006", ERROR, "Two instruments with one id"),
  /** None or more than one. */
  NOT_EXACTLY_ONE("S007", ERROR, "Not exactly one of several ways to give something"),
  /** One of the two is a slip. */
  ROOMS_EXCEED_HOME("S008", ERROR, "Rooms that are far larger than the home"),
  /** Wider or higher. */
  OPENING_EXCEEDS_WINDOW("S009", ERROR, "An opening that is larger than its window"),
  /** Its equivalent area against the whole opening. */
  VENTILATOR_EXCEEDS_WINDOW("S010", ERROR, "A background ventilator larger than its window"),
  /** An area, but none seen. */
  MOULD_CONTRADICTION("S011", ERROR, "An area of mould where none was seen"),
  /** Not there, not relative, or this file itself. */
  PREVIOUS_UNUSABLE("S012", ERROR, "An earlier survey that cannot be used"),
  /** Not earlier. */
  PREVIOUS_LATER("S013", ERROR, "An earlier survey with a later date"),
  /** More than a report should carry. */
  FILE_TOO_LARGE("S014", ERROR, "A named file that is too large"),
  /** It exists, but the system will not give it. */
  FILE_UNREADABLE("S015", ERROR, "A named file that cannot be read"),
  /** Hours are what it wants. */
  HOURS_MISSING("S016", WARNING, "A fan that runs for hours that are not given"),
  /** The readings are used. */
  FACTOR_AND_READINGS("S017", WARNING, "Readings and a temperature factor for one place"),
  /** Heated, sunlit, or read wrongly. */
  SURFACE_ABOVE_AIR("S018", WARNING, "A surface that is warmer than the air"),
  /** Night sky, or read wrongly. */
  SURFACE_BELOW_OUTDOOR("S019", WARNING, "A surface that is colder than outdoors"),
  /** Nothing can be said about winter from it. */
  OUTDOOR_ABOVE_INDOOR("S020", WARNING, "Warmer outdoors than indoors"),
  /** Outside the span from outdoor to room air. */
  SUPPLY_OUT_OF_SPAN("S021", WARNING, "Supply air outside the span of indoors and outdoors"),
  /** More than a day away. */
  READING_FAR_FROM_VISIT("S022", WARNING, "A reading far from the day of the visit"),
  /** A later event before an earlier one. */
  TIMELINE_OUT_OF_ORDER("S023", WARNING, "A timeline that is out of order"),
  /** It says nothing about the readings. */
  CALIBRATED_AFTER_VISIT("S024", WARNING, "A calibration after the visit"),
  /** More than twelve months. */
  CALIBRATION_OLD("S025", WARNING, "A calibration older than twelve months"),
  /** Unit slip, or a fan that fails. */
  FLOWS_FAR_APART("S026", WARNING, "Measured and declared flow far apart"),
  /** It moves no air, it is said. */
  FLOW_OF_BROKEN_FAN("S027", WARNING, "A flow measured at a fan that does not work"),
  /** The cause stays open. */
  WET_WINDOW_UNMEASURED("S028", WARNING, "Condensation on a window without a reading"),
  /** Somewhat. */
  ROOMS_ABOVE_HOME("S029", WARNING, "Rooms that are together larger than the home"),
  /** Rooms are probably missing. */
  ROOMS_FAR_BELOW_HOME("S030", WARNING, "Rooms that are together far smaller than the home"),
  /** More or fewer than the dwelling says. */
  BEDROOMS_DIFFER("S031", WARNING, "Rooms used as bedrooms and the number of bedrooms differ"),
  /** Another currency than the survey's. */
  OTHER_CURRENCY("S032", WARNING, "A price in another currency"),
  /** Neither heat nor vapour can be reckoned through it. */
  LAYER_WITHOUT_THICKNESS("S033", ERROR, "A layer without thickness"),
  /** Too few points, or a pressure that rises with the flow. */
  CURVE_NOT_FALLING("S034", ERROR, "A fan curve that does not fall"),
  /** It would never run. */
  PAUSE_FILLS_CYCLE("S035", ERROR, "A pause as long as the half cycle"),
  /** Not the name of a zone. */
  UNKNOWN_ZONE("S036", ERROR, "A time zone that does not exist"),
  /** Without year, month or day. */
  PATTERN_WITHOUT_DATE("S037", ERROR, "A pattern of time that says no date"),
  /** Two characters, or another than there is. */
  NOT_A_MARK("S038", ERROR, "A delimiter or decimal mark that is none"),
  /** The one that is given is compared with. */
  PREVIOUS_OTHER("S039", WARNING, "Another earlier survey than the one that is compared with"),
  /** By its first bytes, whatever its name. */
  PHOTO_NO_PICTURE("S040", ERROR, "A photograph that is neither JPEG nor PNG"),
  /** Or cut off, or of colours that are for a press. */
  PHOTO_DAMAGED("S041", ERROR, "A photograph that cannot be decoded"),
  /** Told from its header, before it is decoded. */
  PHOTO_TOO_LARGE("S042", ERROR, "A photograph with too many dots"),
  /** Told on the terminal alone, for the report knows no clock. */
  VISIT_TO_COME("S043", WARNING, "A visit that is yet to come"),
  /** More than twelve months. */
  LONG_AFTER_VISIT("S044", WARNING, "A day long after the visit"),
  /** No room of it is in the survey. */
  PREVIOUS_OTHER_HOME("S045", WARNING, "An earlier survey that seems to be of another home");

  private final String code;
  private final Severity severity;
  private final String meaning;

  SurveyCode(String code, Severity severity, String meaning) {
    this.code = code;
    this.severity = severity;
    this.meaning = meaning;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public String meaning() {
    return meaning;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
