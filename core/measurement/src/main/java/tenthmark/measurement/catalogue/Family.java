package tenthmark.measurement.catalogue;

/** The groups in which the function reference lists the worksheet functions. */
public enum Family {
  RECORDING("Writing a measurement down"),
  RESULTS("Stating a result"),
  REPEATS("Repeated readings"),
  CARRYING("Carrying uncertainties through a calculation"),
  LINES("Lines and curves"),
  COMPARING("Comparing results"),
  STANDARD("Standard uncertainties and coverage"),
  EXPLAINING("Explaining a cell");

  private final String title;

  Family(String title) {
    this.title = title;
  }

  /** Heading of the group. */
  public String title() {
    return title;
  }
}
