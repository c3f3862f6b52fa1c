package org.drysill.survey.photo;

import org.drysill.survey.check.SurveyCode;

/** Why a file cannot be printed as a photograph. */
final class BadPicture extends Exception {
  private static final long serialVersionUID = 1L;

  private final SurveyCode code;
  private final String found;
  private final String expected;

  BadPicture(SurveyCode code, String found, String expected) {
    super(found);
    this.code = code;
    this.found = found;
    this.expected = expected;
  }

  SurveyCode code() {
    return code;
  }

  String found() {
    return found;
  }

  String expected() {
    return expected;
  }
}
