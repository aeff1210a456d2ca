# Writes a copy of a source in which one text, that stands there once, is another.
# Run as: cmake -DORIGINAL=<file> -DALTERED=<file> -DFROM=<text> -DTO=<text> -P ...
cmake_minimum_required(VERSION 3.25)

file(READ ${ORIGINAL} text)
string(FIND "${text}" "${FROM}" first)
string(FIND "${text}" "${FROM}" last REVERSE)
if(first EQUAL -1 OR NOT first EQUAL last)
    message(FATAL_ERROR "'${FROM}' does not stand once in ${ORIGINAL}; tests/mutation/mutants.cmake must follow it")
endif()
string(REPLACE "${FROM}" "${TO}" text "${text}")
file(WRITE ${ALTERED} "${text}")
