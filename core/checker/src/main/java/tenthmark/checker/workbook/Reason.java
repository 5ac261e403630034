package tenthmark.checker.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Why something could not be done: a line for people, whatever Java threw. */
public final class Reason {

  private Reason() {}

  /** The line about a fault. */
  public static String of(Throwable fault) {
    if (fault instanceof UnreadableFileException unreadable) {
      return unreadable.getMessage();
    }
    if (fault instanceof OutOfMemoryError) {
      return UnreadableFileException.OUT_OF_MEMORY;
    }
    if (fault instanceof StackOverflowError) {
      return "its parts are nested too deeply";
    }
    if (fault instanceof UncheckedIOException unchecked) {
      return of(unchecked.getCause());
    }
    return fault instanceof IOException problem ? ofFile(problem) : ofChecker(fault);
  }

  /**
   * Why no copy can be made of a workbook that could be read: the libraries that write workbooks
   * build every part of them, and say in many ways what they do not take.
   */
  public static String ofCopy(Throwable fault) {
    return fault instanceof FileSystemException || fault instanceof OutOfTimeException
        ? of(fault)
        : "a part of it is not as its format asks; saving it anew with Calc may mend that";
  }

  private static String ofFile(IOException problem) {
    if (problem instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (problem instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (problem instanceof FileAlreadyExistsException) {
      return "there is another file of this name";
    }
    if (problem instanceof NotDirectoryException) {
      return "not a folder";
    }
    if (problem instanceof FileSystemLoopException) {
      return "the folder lies within itself";
    }
    if (problem instanceof CharacterCodingException) {
      return "it is not text in UTF-8";
    }
    if (problem instanceof FileSystemException file && file.getReason() != null) {
      return file.getReason();
    }
    return problem.getMessage() == null || problem.getMessage().isBlank()
        ? "reading or writing failed"
        : problem.getMessage();
  }

  /** What a maintainer needs to find it, as the line is all that a user can pass on. */
  private static String ofChecker(Throwable fault) {
    StackTraceElement[] trace = fault.getStackTrace();
    String place = trace.length == 0 ? "" : " at " + place(trace[0]);
    return "the checker itself failed (please report this: "
        + fault.getClass().getSimpleName()
        + place
        + ")";
  }

  private static String place(StackTraceElement where) {
    String type = where.getClassName().substring(where.getClassName().lastIndexOf('.') + 1);
    return type + ", line " + where.getLineNumber();
  }
}
