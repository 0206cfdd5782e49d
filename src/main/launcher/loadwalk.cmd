@echo off
rem Starts Loadwalk; the screens need WSL, the commands that print lines run here too.
java -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -jar "%~dp0loadwalk.jar" %*
