@echo off
rem Starts fizzhull from this folder; needs Java 17 or later and nothing else.
rem Read line by line, but not yet run on Windows: the builds of this project run on Unix. Please report what fails.
rem From Java 19 on the classes are kept ready parsed in the folder below LOCALAPPDATA; Java 17 and 18 pass over that.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -Xlog:disable -Xshare:auto -XX:+IgnoreUnrecognizedVMOptions -XX:+AutoCreateSharedArchive "-XX:SharedArchiveFile=%LOCALAPPDATA%\fizzhull.jsa" -Dfile.encoding=UTF-8 -jar "%~dp0fizzhull.jar" %*
exit /b %ERRORLEVEL%
