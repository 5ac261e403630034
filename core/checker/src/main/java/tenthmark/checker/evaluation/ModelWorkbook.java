package tenthmark.checker.evaluation;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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

  private final Workbook workbook;
  private final UDFFinder functions;
  private final List<ModelSheet> sheets;
  private final Map<CellAddress, Ptg[]> tokens = new HashMap<>();
  private final Set<CellAddress> inArrays = new HashSet<>();

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
    int sheet = getSheetIndex(address.sheet());
    if (formula.array().isEmpty()) {
      Ptg[] inCell = parse(formula.text(), FormulaType.CELL, sheet, address.row());
      if (!InlineArrays.areIn(inCell)) {
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
  public EvaluationName getName(String name, int sheet) {
    Optional<DefinedName> defined = workbook.name(name, sheet < 0 ? "" : getSheetName(sheet));
    return defined.map(ModelName::new).orElse(null);
  }

  @Override
  public EvaluationName getName(NamePtg token) {
    return new ModelName(workbook.names().get(token.getIndex()));
  }

  @Override
  public Ptg getNameXPtg(String name, SheetIdentifier sheet) {
    requireThisFile(sheet);
    if (sheet == null) {
      return functions.findFunction(name) == null ? null : new NameXPxg(name);
    }
    return new NameXPxg(sheet.getSheetIdentifier().getName(), name);
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

  /** A defined name as POI sees it. */
  private final class ModelName implements EvaluationName {

    private final DefinedName name;

    ModelName(DefinedName name) {
      this.name = name;
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
      int sheet = name.sheet().map(ModelWorkbook.this::getSheetIndex).orElse(-1);
      return parse(name.formula(), FormulaType.NAMEDRANGE, sheet, 0);
    }

    @Override
    public NamePtg createPtg() {
      return new NamePtg(workbook.names().indexOf(name));
    }
  }
}
