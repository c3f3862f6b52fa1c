package org.drysill.yaml;

/** What can be wrong with a file whatever it is about. */
public enum YamlCode implements ProblemCode {
  /** Missing, a folder, or closed to us. */
  UNREADABLE("Y001", "The file cannot be read"),
  /** More bytes than a file of this kind ever needs. */
  TOO_LARGE("Y002", "The file is too large"),
  /** Another encoding, or no text at all. */
  NOT_UTF8("Y003", "The file is not UTF-8 text"),
  /** A character that no document may hold. */
  CONTROL_CHARACTER("Y004", "A control character in the text"),
  /** Nothing, or comments only. */
  EMPTY("Y005", "The file is empty"),
  /** Broken syntax. */
  NOT_YAML("Y006", "The text is not YAML"),
  /** A tab where YAML wants spaces. */
  TAB("Y007", "A tab instead of spaces"),
  /** A second {@code ---}. */
  SEVERAL_DOCUMENTS("Y008", "More than one document in the file"),
  /** Brackets within brackets within brackets. */
  TOO_DEEP("Y009", "Nested too deeply"),
  /** A few bytes that stand for millions. */
  TOO_MANY_ALIASES("Y010", "Too many aliases"),
  /** A type forced upon a value. */
  TAG("Y011", "A tag on a value"),
  /** The same key twice in one place. */
  DUPLICATE_KEY("Y012", "A key that stands there twice"),
  /** Not one of the keys of its place. */
  UNKNOWN_KEY("Y013", "An unknown key"),
  /** A key that must be there. */
  MISSING_KEY("Y014", "A required key is missing"),
  /** A list for a text, a text for a list. */
  WRONG_SHAPE("Y015", "A value of the wrong shape"),
  /** Not a number. */
  NOT_A_NUMBER("Y016", "Not a number"),
  /** Not a date. */
  NOT_A_DATE("Y017", "Not a date or a time"),
  /** A unit of another kind of quantity. */
  WRONG_UNIT("Y018", "A wrong unit"),
  /** A number with two readings. */
  AMBIGUOUS_NUMBER("Y019", "A number that can be read in two ways"),
  /** From high to low. */
  BACKWARDS("Y020", "A range or uncertainty that runs backwards"),
  /** Nature or construction does not allow it. */
  IMPOSSIBLE("Y021", "A value outside what is possible"),
  /** Allowed, but seldom true. */
  IMPLAUSIBLE("Y022", "A value outside what is usual") {
    @Override
    public Problem.Severity severity() {
      return Problem.Severity.WARNING;
    }
  },
  /** Not one of the words of this place. */
  UNKNOWN_WORD("Y023", "An unknown word"),
  /** Not an entry of the table that it should come from. */
  NOT_IN_TABLE("Y024", "No such entry in the table"),
  /** A key without a value. */
  BLANK("Y025", "A required value is blank"),
  /** Absolute, or above the folder of the file. */
  PATH_LEAVES_FOLDER("Y026", "A path that leaves the folder"),
  /** Not there. */
  NO_SUCH_FILE("Y027", "A named file that does not exist"),
  /** Two things of one name. */
  DUPLICATE_ID("Y028", "An id that is used twice"),
  /** An alias within its own anchor. */
  CONTAINS_ITSELF("Y029", "A value that contains itself"),
  /** The record's own rule. */
  REFUSED("Y030", "Values that do not go together"),
  /** Too few or too many entries. */
  WRONG_COUNT("Y031", "A list with the wrong number of entries");

  private final String code;
  private final String meaning;

  YamlCode(String code, String meaning) {
    this.code = code;
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
}
