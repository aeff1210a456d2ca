# Two packages by `cpack -G DEB`: the program, and what is needed to build against the library.

set(SEATLOAD_MAINTAINER "Ottermere Rebuilds <office@ottermere-rebuilds.example>")  # an invented workshop
set(debian ${PROJECT_BINARY_DIR}/debian)

# A licence as Debian's copyright files hold it: each line set in, an empty one as a dot.
function(read_licence file variable)
    file(READ ${file} text)
    string(STRIP "${text}" text)
    string(REGEX REPLACE "\n[ \t]*\n" "\n.\n" text "\n${text}")
    string(REGEX REPLACE "\n[ \t]*\n" "\n.\n" text "${text}")
    string(REPLACE "\n" "\n " text "${text}")
    string(SUBSTRING "${text}" 1 -1 text)
    set(${variable} "${text}" PARENT_SCOPE)
endfunction()

read_licence(${PROJECT_SOURCE_DIR}/LICENSE LICENSE_TEXT)
read_licence(${PROJECT_SOURCE_DIR}/lib/data/fonts/OFL.txt FONT_LICENSE_TEXT)
configure_file(${PROJECT_SOURCE_DIR}/lib/packaging/copyright.in ${debian}/copyright @ONLY)
configure_file(${PROJECT_SOURCE_DIR}/lib/packaging/changelog.in ${debian}/changelog @ONLY)

# Debian wants manual pages and changelogs packed, and zsh's completions in a folder of their own.
foreach(package seatload libseatload-dev)
    install(FILES ${debian}/copyright DESTINATION share/doc/${package}
            COMPONENT debian_${package} EXCLUDE_FROM_ALL)
    install(CODE "
        set(root \"\$ENV{DESTDIR}\${CMAKE_INSTALL_PREFIX}/share\")
        file(MAKE_DIRECTORY \"\${root}/doc/${package}\")
        execute_process(COMMAND gzip -9nc ${debian}/changelog OUTPUT_FILE \"\${root}/doc/${package}/changelog.gz\"
                        COMMAND_ERROR_IS_FATAL ANY)" COMPONENT debian_${package} EXCLUDE_FROM_ALL)
endforeach()
install(CODE "
    set(root \"\$ENV{DESTDIR}\${CMAKE_INSTALL_PREFIX}/share\")
    file(MAKE_DIRECTORY \"\${root}/man/man1\")
    file(GLOB pages \"${PROJECT_BINARY_DIR}/share/man/man1/*.1\")
    foreach(page IN LISTS pages)
        get_filename_component(name \"\${page}\" NAME)
        execute_process(COMMAND gzip -9nc \"\${page}\" OUTPUT_FILE \"\${root}/man/man1/\${name}.gz\"
                        COMMAND_ERROR_IS_FATAL ANY)
    endforeach()" COMPONENT debian_seatload EXCLUDE_FROM_ALL)
install(FILES ${PROJECT_BINARY_DIR}/share/zsh/site-functions/_seatload DESTINATION share/zsh/vendor-completions
        COMPONENT debian_seatload EXCLUDE_FROM_ALL)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME seatload)
set(CPACK_PACKAGE_CONTACT "${SEATLOAD_MAINTAINER}")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "size compression springs and write the papers to order them")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_COMPONENTS_ALL seatload_program debian_seatload seatload_development debian_libseatload-dev)
set(CPACK_COMPONENTS_GROUPING ONE_PER_GROUP)
set(CPACK_COMPONENT_SEATLOAD_PROGRAM_GROUP program)
set(CPACK_COMPONENT_DEBIAN_SEATLOAD_GROUP program)
set(CPACK_COMPONENT_SEATLOAD_DEVELOPMENT_GROUP development)
set(CPACK_COMPONENT_DEBIAN_LIBSEATLOAD-DEV_GROUP development)
set(CPACK_DEB_COMPONENT_INSTALL ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)

set(CPACK_DEBIAN_PROGRAM_PACKAGE_NAME seatload)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PROGRAM_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PROGRAM_DESCRIPTION
"For the owner of a workshop that rebuilds engines and gearboxes and needs a
better compression spring wound to order. It tells from bench readings what the
old spring gives, and from pressures and friction what a better one must give;
finds every combination of wire and coil that gives it; and writes drawing,
enquiry and calculation as PDF, judges makers' offers, inspects the lot that
came, and keeps what was approved.")

set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_NAME libseatload-dev)
set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_SECTION libdevel)
set(CPACK_DEBIAN_DEVELOPMENT_PACKAGE_DEPENDS
    "libboost-dev (>= 1.74), libfmt-dev, libtomlplusplus-dev, nlohmann-json3-dev, libhpdf-dev, libqpdf-dev, libssl-dev")
set(CPACK_DEBIAN_DEVELOPMENT_DESCRIPTION
"The static library behind seatload, its headers and its CMake package
(find_package(seatload)): the mechanics of compression springs after
EN 13906-1, exact search for what fits a requirement, tolerances, bench
readings, drawings as PDF.")
include(CPack)
