# Compiler warnings and sanitizers of our own targets; nothing here reaches those who link to us.

function(seatload_options target)
    target_compile_options(${target} PRIVATE -Wall -Wextra -Wpedantic -Wconversion -Wshadow)
    # g++ 12 sees overlapping copies in every std::string concatenation (GCC bug 105651); later versions do not.
    if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
        target_compile_options(${target} PRIVATE -Wno-restrict)
    endif()
    # Contraction to fused multiply-add would change last digits from one machine to another.
    target_compile_options(${target} PRIVATE -ffp-contract=off)
    if(SEATLOAD_WARNINGS_ARE_ERRORS)
        target_compile_options(${target} PRIVATE -Werror)
    endif()
    if(SEATLOAD_SANITIZE)
        target_compile_options(${target} PRIVATE -fsanitize=${SEATLOAD_SANITIZE} -fno-sanitize-recover=all -fno-omit-frame-pointer)
        target_link_options(${target} PRIVATE -fsanitize=${SEATLOAD_SANITIZE})
        # A quarter of the build and the run goes into asking every pointer for null and alignment; a null one that is
        # used is caught by the address sanitizer as well.
        if(SEATLOAD_SANITIZE MATCHES "address" AND SEATLOAD_SANITIZE MATCHES "undefined")
            target_compile_options(${target} PRIVATE -fno-sanitize=null,alignment)
        endif()
    endif()
    # Much of the time goes into reading the same headers again. Batches are as large as two of them in a small memory
    # allow; smaller ones suit whoever compiles after each change.
    set_target_properties(${target} PROPERTIES UNITY_BUILD ${SEATLOAD_UNITY} UNITY_BUILD_BATCH_SIZE ${SEATLOAD_UNITY_BATCH})
endfunction()
