@echo off
rem Starts the checker: finds Java 17 or newer and the jar.
rem
rem Java: TENTHMARK_JAVA, else the folder runtime beside this script, else JAVA_HOME, else the path.
rem The jar: TENTHMARK_CHECKER_JAR, else beside this script, else where a build leaves it.
setlocal

set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if exist "%~dp0runtime\bin\java.exe" set "java=%~dp0runtime\bin\java.exe"
if defined TENTHMARK_JAVA set "java=%TENTHMARK_JAVA%"
"%java%" -version >nul 2>&1
if errorlevel 1 (
  echo tenthmark-checker: Java was not found; install Java 17 or newer or set TENTHMARK_JAVA 1>&2
  exit /b 2
)

set "jar=%TENTHMARK_CHECKER_JAR%"
if not defined jar if exist "%~dp0tenthmark-checker.jar" set "jar=%~dp0tenthmark-checker.jar"
if not defined jar if exist "%~dp0..\core\checker\target\tenthmark-checker.jar" set "jar=%~dp0..\core\checker\target\tenthmark-checker.jar"
if not defined jar (
  echo tenthmark-checker: tenthmark-checker.jar was not found; put it beside this script or set TENTHMARK_CHECKER_JAR 1>&2
  exit /b 2
)

"%java%" -jar "%jar%" %*
exit /b %errorlevel%
