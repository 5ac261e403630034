package tenthmark.checker.evaluation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.EvaluationCell;
import org.apache.poi.ss.formula.EvaluationName;
import org.apache.poi.ss.formula.EvaluationSheet;
import org.apache.poi.ss.formula.EvaluationWorkbook;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaParsingWorkbook;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.SheetIdentifier;
import org.apache.poi.ss.formula.function.FunctionMetadataRegistry;
import org.apache.poi.ss.formula.ptg.Area3DPxg;
import org.apache.poi.ss.formula.ptg.ConcatPtg;
import org.apache.poi.ss.formula.ptg.NamePtg;
import org.apache.poi.ss.formula.ptg.NameXPtg;
import org.apache.poi.ss.formula.ptg.NameXPxg;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Ref3DPxg;
import org.apache.poi.ss.formula.ptg.UnionPtg;
import org.apache.poi.ss.formula.udf.UDFFinder;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Table;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import tenthmark.checker.workbook.Content;
import tenthmark.checker.workbook.DefinedName;
import tenthmark.checker.workbook.FormulaText;
import tenthmark.checker.workbook.OutOfTimeException;
import tenthmark.checker.workbook.Workbook;
import tenthmark.measurement.formula.CellAddress;

/** A workbook of any format as POI's formula parser and evaluator see it. */
final class ModelWorkbook implements EvaluationWorkbook, FormulaParsingWorkbook {

  /** Each joint copies the text before it, so that very many take very long. */
  private static final int MOST_JOINED = 255;

  /** A formula of everything that has a class of its own in POI. */
  private static final String EVERYTHING =
      "IF((-1+2-3)*4/5^6%>=+7,\"a\"&\"b\",A1:B2)<>(SUM(A1,,{1,TRUE})<=PI())=(1<2)>#N/A";

  static {
    // A class whose initialisation runs out of stack, as in a formula of a thousand levels, is lost
    // for all files that follow.
    new ModelWorkbook(new Workbook(List.of(), List.of()), name -> null)
        .parse(EVERYTHING, FormulaType.CELL, 0, 0);
  }

  private final Workbook workbook;
  private final UDFFinder functions;
  private final List<ModelSheet> sheets;
  private final Map<CellAddress, Ptg[]> tokens = new HashMap<>();
  private final Set<CellAddress> inArrays = new HashSet<>();
  private final List<SeenName> seenNames = new ArrayList<>();
  private final Map<Seen, SeenName> bySight = new HashMap<>();

  /** The cell from which the formula that is being read sees its names. */
  private CellAddress user;

  private record Seen(DefinedName name, CellAddress from) {}

  ModelWorkbook(Workbook workbook, UDFFinder functions) {
    this.workbook = workbook;
    this.functions = functions;
    this.sheets =
        workbook.sheets().stream().map(sheet -> new ModelSheet(sheet, inArrays::contains)).toList();
  }

  /** The cell at an address, or null as POI wants it if it holds nothing. */
  EvaluationCell cell(CellAddress address) {
    return sheets.get(getSheetIndex(address.sheet())).getCell(address.row(), address.column());
  }

  /** The tokens of a formula in reverse Polish order. */
  Ptg[] tokens(CellAddress address, Content.Formula formula) {
    return tokens.computeIfAbsent(address, key -> parse(key, formula));
  }

  private Ptg[] parse(CellAddress address, Content.Formula formula) {
    user = address;
    int sheet = getSheetIndex(address.sheet());
    if (formula.array().isEmpty()) {
      Ptg[] inCell = parse(formula.text(), FormulaType.CELL, sheet, address.row());
      if (!InlineArrays.areIn(inCell, name -> seen(name).getNameDefinition())) {
        return inCell;
      }
      inArrays.add(address);
    }
    return parse(formula.text(), FormulaType.ARRAY, sheet, address.row());
  }

  private Ptg[] parse(String formula, FormulaType type, int sheet, int row) {
    if (formula.isBlank()) {
      throw NotCheckableException.of("reason.form");
    }
    if (formula.length() > FormulaText.LONGEST) {
      throw NotCheckableException.of("reason.long.formula", FormulaText.LONGEST);
    }
    try {
      String marked = OwnFunctions.marked(formula, type);
      Ptg[] tokens = FormulaParser.parse(marked, this, type, sheet, row);
      if (Stream.of(tokens).filter(ConcatPtg.class::isInstance).count() > MOST_JOINED) {
        throw NotCheckableException.of("reason.joined", MOST_JOINED);
      }
      if (Stream.of(tokens).anyMatch(UnionPtg.class::isInstance)) {
        // POI gives 0 for some of them.
        throw NotCheckableException.of("reason.ranges");
      }
      return Precedence.corrected(tokens);
    } catch (NotCheckableException known) {
      throw known;
    } catch (StackOverflowError deep) {
      throw NotCheckableException.tooDeep();
    } catch (RuntimeException problem) {
      // Unknown functions may have arguments of their own grammar, such as the names in LET.
      throw FormulaText.calls(formula).stream()
          .filter(name -> !isKnown(name))
          .findFirst()
          .map(NotCheckableException::unknownFunction)
          .orElseGet(() -> NotCheckableException.unreadable(problem));
    }
  }

  private boolean isKnown(String function) {
    return functions.findFunction(function) != null
        || FunctionMetadataRegistry.getFunctionByName(function.toUpperCase(Locale.ROOT)) != null;
  }

  @Override
  public Ptg[] getFormulaTokens(EvaluationCell cell) {
    ModelCell model = (ModelCell) cell;
    return tokens(model.address(), (Content.Formula) model.content());
  }

  @Override
  public UDFFinder getUDFFinder() {
    return functions;
  }

  @Override
  public SpreadsheetVersion getSpreadsheetVersion() {
    return SpreadsheetVersion.EXCEL2007;
  }

  @Override
  public String getSheetName(int index) {
    return workbook.sheets().get(index).name();
  }

  @Override
  public int getSheetIndex(EvaluationSheet sheet) {
    return sheets.indexOf((ModelSheet) sheet);
  }

  @Override
  public int getSheetIndex(String name) {
    for (int i = 0; i < sheets.size(); i++) {
      if (getSheetName(i).equalsIgnoreCase(name)) {
        return i;
      }
    }
    return -1;
  }

  @Override
  public EvaluationSheet getSheet(int index) {
    return sheets.get(index);
  }

  @Override
  public SeenName getName(String name, int sheet) {
    return workbook
        .name(name, sheet < 0 ? "" : getSheetName(sheet))
        .map(defined -> seen(defined, user))
        .orElse(null);
  }

  private SeenName seen(DefinedName name, CellAddress from) {
    return bySight.computeIfAbsent(
        new Seen(name, from),
        unseen -> {
          SeenName seen = new SeenName(name, from, seenNames.size());
          seenNames.add(seen);
          return seen;
        });
  }

  @Override
  public SeenName getName(NamePtg token) {
    return seen(token);
  }

  private SeenName seen(NamePtg token) {
    return seenNames.get(token.getIndex());
  }

  /** The name that a token stands for, from wherever it is seen. */
  DefinedName defined(NamePtg token) {
    return seen(token).name;
  }

  /** What a name stands for as seen from the cell for which it was defined. */
  Ptg[] definition(DefinedName name, String sheet) {
    CellAddress base = name.meaning().base();
    return seen(name, new CellAddress(sheet, base.column(), base.row())).getNameDefinition();
  }

  @Override
  public Ptg getNameXPtg(String name, SheetIdentifier sheet) {
    requireThisFile(sheet);
    if (sheet == null) {
      return functions.findFunction(name) == null ? null : new NameXPxg(name);
    }
    String owner = sheet.getSheetIdentifier().getName();
    SeenName ofSheet = getName(name, getSheetIndex(owner));
    return ofSheet == null ? new NameXPxg(owner, name) : ofSheet.createPtg();
  }

  @Override
  public Ptg get3DReferencePtg(CellReference cell, SheetIdentifier sheet) {
    requireThisFile(sheet);
    return new Ref3DPxg(sheet, cell);
  }

  @Override
  public Ptg get3DReferencePtg(AreaReference area, SheetIdentifier sheet) {
    requireThisFile(sheet);
    return new Area3DPxg(sheet, area);
  }

  private void requireThisFile(SheetIdentifier sheet) {
    if (sheet != null && sheet.getBookName() != null) {
      throw NotCheckableException.of("reason.file");
    }
  }

  @Override
  public ExternalSheet getExternalSheet(String first, String last, int otherWorkbook) {
    if (first != null && (getSheetIndex(first) < 0 || (last != null && getSheetIndex(last) < 0))) {
      throw NotCheckableException.of("reason.sheet");
    }
    return last == null || last.equals(first)
        ? new ExternalSheet(null, first)
        : new ExternalSheetRange(null, first, last);
  }

  @Override
  public ExternalName getExternalName(String name, String sheet, int otherWorkbook) {
    return new ExternalName(name, -1, 0);
  }

  @Override
  public int getExternalSheetIndex(String sheet) {
    return getSheetIndex(sheet);
  }

  @Override
  public int convertFromExternSheetIndex(int index) {
    return index;
  }

  @Override
  public void clearAllCachedResultValues() {
    tokens.clear();
  }

  @Override
  public Table getTable(String name) {
    throw NotCheckableException.of("reason.table", name);
  }

  @Override
  public Name createName() {
    throw new UnsupportedOperationException("the checker never changes a workbook");
  }

  @Override
  public ExternalSheet getExternalSheet(int index) {
    throw new UnsupportedOperationException("numbered sheets belong to .xls files");
  }

  @Override
  public ExternalName getExternalName(int sheet, int name) {
    throw new UnsupportedOperationException("numbered names belong to .xls files");
  }

  @Override
  public int getExternalSheetIndex(String otherWorkbook, String sheet) {
    throw new UnsupportedOperationException("numbered sheets belong to .xls files");
  }

  @Override
  public String resolveNameXText(NameXPtg token) {
    throw new UnsupportedOperationException("numbered names belong to .xls files");
  }

  /**
   * A defined name as POI sees it. POI knows no names whose references move with the cell that uses
   * them, so each such cell has its own.
   */
  final class SeenName implements EvaluationName {

    private final DefinedName name;
    private final CellAddress from;
    private final int index;
    private Ptg[] definition;

    SeenName(DefinedName name, CellAddress from, int index) {
      this.name = name;
      this.from = from;
      this.index = index;
    }

    @Override
    public String getNameText() {
      return name.name();
    }

    @Override
    public boolean isFunctionName() {
      return false;
    }

    @Override
    public boolean hasFormula() {
      return true;
    }

    @Override
    public boolean isRange() {
      return true;
    }

    @Override
    public Ptg[] getNameDefinition() {
      OutOfTimeException.ifInterrupted();
      if (definition == null) {
        definition = read();
      }
      return definition;
    }

    private Ptg[] read() {
      user = from;
      int sheet = getSheetIndex(name.meaning().base().sheet());
      Ptg[] tokens = parse(name.formula(), FormulaType.NAMEDRANGE, sheet, 0);
      return MovedReferences.of(tokens, name, from);
    }

    @Override
    public NamePtg createPtg() {
      return new NamePtg(index);
    }
  }
}
