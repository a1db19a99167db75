@echo off
rem Starts Urnwright quickly: from the second run on with an archive of its loaded classes, which
rem a first run makes in the background. URNWRIGHT_ARCHIVES names another folder for it.
setlocal
set "HOME_=%~dp0.."
for %%I in ("%HOME_%") do set "HOME_=%%~fI"
set "JAR=%HOME_%\lib\urnwright.jar"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
set "FLAGS=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Xlog:disable"
if not defined URNWRIGHT_ARCHIVES set "URNWRIGHT_ARCHIVES=%LOCALAPPDATA%\Urnwright"
if not exist "%URNWRIGHT_ARCHIVES%" mkdir "%URNWRIGHT_ARCHIVES%" 2>nul
for %%I in ("%JAR%") do set "KEY=%%~zI %%~tI"
set "KEY=%KEY: =-%"
set "KEY=%KEY:/=-%"
set "KEY=%KEY::=-%"
set "KEY=%KEY:.=-%"
set "ARCHIVE=%URNWRIGHT_ARCHIVES%\%KEY%.jsa"
if exist "%ARCHIVE%" (
  "%JAVA%" %FLAGS% "-XX:SharedArchiveFile=%ARCHIVE%" -jar "%JAR%" %*
  exit /b
)
mkdir "%ARCHIVE%.making" 2>nul && start "" /b cmd /c ""%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:dump "-XX:SharedClassListFile=%HOME_%\lib\classes.txt" "-XX:SharedArchiveFile=%ARCHIVE%.making\archive" -cp "%JAR%" >nul 2>nul && move "%ARCHIVE%.making\archive" "%ARCHIVE%" >nul & rmdir /s /q "%ARCHIVE%.making""
"%JAVA%" %FLAGS% -jar "%JAR%" %*
exit /b
