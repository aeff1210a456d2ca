# What is installed besides the program and the library: data to start from, documentation, manual pages, completions.
# Components: seatload_program goes everywhere; seatload_plain only where files are installed as they are;
# seatload_debian only into Debian packages, which keep these things elsewhere.

set(here ${CMAKE_INSTALL_DATADIR}/seatload)
foreach(folder templates specs)
    install(DIRECTORY ${PROJECT_SOURCE_DIR}/${folder} DESTINATION ${here} COMPONENT seatload_program
            PATTERN ".lock" EXCLUDE PATTERN ".aside*" EXCLUDE)
endforeach()
install(DIRECTORY ${PROJECT_SOURCE_DIR}/lib/data/schema DESTINATION ${here} COMPONENT seatload_program
        FILES_MATCHING PATTERN "*.json")
install(DIRECTORY ${PROJECT_SOURCE_DIR}/cli/schema/ DESTINATION ${here}/schema/output COMPONENT seatload_program
        FILES_MATCHING PATTERN "*.json")

install(FILES ${PROJECT_SOURCE_DIR}/README.md DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT seatload_program)
install(DIRECTORY ${PROJECT_SOURCE_DIR}/cli/manual DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT seatload_program
        FILES_MATCHING PATTERN "*.md" PATTERN "*.png")
install(FILES ${PROJECT_SOURCE_DIR}/LICENSE ${PROJECT_SOURCE_DIR}/lib/data/fonts/OFL.txt
        DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT seatload_plain)
install(FILES ${PROJECT_SOURCE_DIR}/tests/consumer/project/CMakeLists.txt
              ${PROJECT_SOURCE_DIR}/tests/consumer/project/size_a_spring.cpp
        DESTINATION ${CMAKE_INSTALL_DOCDIR}/examples COMPONENT seatload_development)

set(made ${PROJECT_BINARY_DIR}/share)
install(DIRECTORY ${made}/man/man1 DESTINATION ${CMAKE_INSTALL_MANDIR} COMPONENT seatload_plain)
install(DIRECTORY ${made}/bash-completion ${made}/fish DESTINATION ${CMAKE_INSTALL_DATADIR} COMPONENT seatload_program)
install(DIRECTORY ${made}/zsh DESTINATION ${CMAKE_INSTALL_DATADIR} COMPONENT seatload_plain)
