# Installs the build below a folder it was not configured for, and moves it on from there; then configures, builds and
# runs the consumer's project against it, and looks that all is there.
cmake_minimum_required(VERSION 3.25)

function(run)
    execute_process(COMMAND ${ARGN} RESULT_VARIABLE result OUTPUT_VARIABLE output ERROR_VARIABLE output)
    if(NOT result EQUAL 0)
        string(REPLACE ";" " " command "${ARGN}")
        message(FATAL_ERROR "${command}\ngave ${result}:\n${output}")
    endif()
    set(output "${output}" PARENT_SCOPE)
endfunction()

set(flags "")
if(SANITIZE)
    set(flags "-fsanitize=${SANITIZE}")
endif()
file(REMOVE_RECURSE ${SCRATCH})
file(MAKE_DIRECTORY ${SCRATCH})
run(${CMAKE_COMMAND} -E env DESTDIR=${SCRATCH}/staged ${CMAKE_COMMAND} --install ${BUILD} --prefix /opt/seatload
    --config ${CONFIG})
set(prefix ${SCRATCH}/moved)
file(RENAME ${SCRATCH}/staged/opt/seatload ${prefix})

foreach(installed bin/seatload share/man/man1/seatload.1 share/man/man1/seatload-size.1
        share/bash-completion/completions/seatload share/zsh/site-functions/_seatload
        share/fish/vendor_completions.d/seatload.fish share/seatload/templates/ahead_latch.toml
        share/seatload/templates/wording/de.toml share/seatload/specs/ottermere-m14/ahead-latch-plunger.toml
        share/doc/seatload/README.md share/doc/seatload/LICENSE share/doc/seatload/OFL.txt
        share/doc/seatload/examples/size_a_spring.cpp include/seatload/sizing/spread.hpp)
    if(NOT EXISTS ${prefix}/${installed})
        message(FATAL_ERROR "${installed} was not installed")
    endif()
endforeach()
# Manual and schemas: every file of theirs.
function(expect_all folder pattern place)
    file(GLOB_RECURSE files RELATIVE ${SOURCE}/${folder} ${SOURCE}/${folder}/${pattern})
    foreach(file IN LISTS files)
        if(NOT EXISTS ${prefix}/${place}/${file})
            message(FATAL_ERROR "${folder}/${file} was not installed")
        endif()
    endforeach()
endfunction()
expect_all(cli/manual *.md share/doc/seatload/manual)
expect_all(lib/data/schema *.json share/seatload/schema)
expect_all(cli/schema *.json share/seatload/schema/output)

run(${CMAKE_COMMAND} -S ${prefix}/share/doc/seatload/examples -B ${SCRATCH}/build -D CMAKE_PREFIX_PATH=${prefix}
    -D CMAKE_BUILD_TYPE=${CONFIG} -D CMAKE_CXX_COMPILER=${COMPILER} -D CMAKE_CXX_FLAGS=${flags})
run(${CMAKE_COMMAND} --build ${SCRATCH}/build --config ${CONFIG})
run(${SCRATCH}/build/size_a_spring)
file(WRITE ${SCRATCH}/said "${output}")
run(awk -f ${CMAKE_CURRENT_LIST_DIR}/check_spring.awk ${SCRATCH}/said)
run(${prefix}/bin/seatload size ${prefix}/share/seatload/templates/ahead_latch.toml -n 1 --output ${SCRATCH}/papers)
run(${prefix}/bin/seatload --version)
