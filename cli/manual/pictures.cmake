# Draws the manual's pictures anew from the program's own papers (target manual_pictures). Given: SEATLOAD the program,
# ROOT the sources, SCRATCH a folder to work in. Needs pdftocairo of poppler-utils.
find_program(PDFTOCAIRO pdftocairo REQUIRED)
file(REMOVE_RECURSE ${SCRATCH})
file(MAKE_DIRECTORY ${SCRATCH})
file(COPY ${ROOT}/templates ${ROOT}/specs DESTINATION ${SCRATCH})

# seatload(<exit code> <word>...): a command of the tutorial.
function(seatload code)
    execute_process(COMMAND ${SEATLOAD} ${ARGN} WORKING_DIRECTORY ${SCRATCH} RESULT_VARIABLE ended OUTPUT_QUIET)
    if(NOT ended EQUAL code)
        message(FATAL_ERROR "seatload ${ARGN} ended with ${ended}")
    endif()
endfunction()

# picture(<name> <pdf> <page> <dots per inch>): a page in grey.
function(picture name pdf page dpi)
    execute_process(COMMAND ${PDFTOCAIRO} -png -gray -r ${dpi} -f ${page} -l ${page} -singlefile output/${pdf}.pdf
                            ${ROOT}/cli/manual/pictures/${name}
                    WORKING_DIRECTORY ${SCRATCH} COMMAND_ERROR_IS_FATAL ANY)
    file(SIZE ${ROOT}/cli/manual/pictures/${name}.png bytes)
    message(STATUS "${name}.png: ${bytes} bytes")
    if(bytes GREATER_EQUAL 120000)
        message(FATAL_ERROR "${name}.png is too large to be kept: give it fewer dots per inch")
    endif()
endfunction()

set(stem ottermere-m14-ahead-latch-plunger)
seatload(0 bench templates/ahead_latch_readings.toml)
seatload(0 budget templates/ahead_latch_plunger.toml --output output)
seatload(0 size templates/ahead_latch.toml)
seatload(0 inspect specs/ottermere-m14/ahead-latch-plunger.toml templates/ahead_lot_good.toml)
seatload(0 quotes output/${stem}-enquiry.pdf templates/replies/maker_a.toml templates/replies/maker_b.toml
         templates/replies/maker_c.toml --need 50 --date 2026-12-15 --rate GBP=1.1725)

picture(bench ahead-latch-readings 1 100)
picture(pressure ${stem}-pressure 1 100)
picture(sheet ${stem}-a 1 100)
picture(enquiry ${stem}-enquiry 1 100)
picture(calculation ${stem}-calculation 4 95)
picture(quotes ${stem}-quotes 1 95)
picture(lot om14-lat-ahd-first-delivery 1 95)
