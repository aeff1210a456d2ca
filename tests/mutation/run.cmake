# Fails unless every altered program fails a test, and the one that was altered into itself passes all.
# Run as: cmake -DFOLDER=<of the programs> -DNAMES=<comma-separated> -P ...
cmake_minimum_required(VERSION 3.25)

string(REPLACE "," ";" names "${NAMES}")
set(wrong "")
foreach(name ${names})
    execute_process(COMMAND ${FOLDER}/${name} RESULT_VARIABLE failed OUTPUT_VARIABLE said ERROR_VARIABLE said)
    string(REGEX MATCH "test cases:[^\n]*" count "${said}")
    if(name STREQUAL "mutant_of_nothing")
        set(expected "^0$")
    else()
        set(expected "^[1-9][0-9]*$")  # a number of failures, not a crash
    endif()
    if(failed MATCHES "${expected}" AND said MATCHES "[0-9]+ assertion|All tests passed|assertions:")
        message(STATUS "${name}: as it must (${failed}) ${count}")
    else()
        string(APPEND wrong "\n${name}: ${failed}\n${said}")
    endif()
endforeach()
if(wrong)
    message(FATAL_ERROR "Alterations that no test noticed, or not as a test should:${wrong}")
endif()
