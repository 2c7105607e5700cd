# SPDX-License-Identifier: MIT
# Install rules and the CMake package. Two export sets: the headers, which need nothing, and the compiled library.
if(SKBUILD)
  # A wheel has one layout on every system: makegood/include, makegood/lib/cmake/makegood, makegood/_core.
  set(CMAKE_INSTALL_INCLUDEDIR include)
  set(CMAKE_INSTALL_LIBDIR lib)
endif()
set(makegood_cmake_dir "${CMAKE_INSTALL_LIBDIR}/cmake/makegood")

install(DIRECTORY "${PROJECT_SOURCE_DIR}/include/makegood" DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}"
        FILES_MATCHING PATTERN "*.hpp")

install(TARGETS makegood_headers EXPORT makegoodHeadersTargets)
install(
  EXPORT makegoodHeadersTargets
  NAMESPACE makegood::
  DESTINATION "${makegood_cmake_dir}")

if(TARGET makegood AND NOT SKBUILD)
  install(
    TARGETS makegood
    EXPORT makegoodCompiledTargets
    ARCHIVE DESTINATION "${CMAKE_INSTALL_LIBDIR}"
    LIBRARY DESTINATION "${CMAKE_INSTALL_LIBDIR}"
    RUNTIME DESTINATION "${CMAKE_INSTALL_BINDIR}")
  install(
    EXPORT makegoodCompiledTargets
    NAMESPACE makegood::
    DESTINATION "${makegood_cmake_dir}")
endif()

configure_package_config_file(
  "${PROJECT_SOURCE_DIR}/src/cmake/makegoodConfig.cmake.in" "${PROJECT_BINARY_DIR}/makegoodConfig.cmake"
  INSTALL_DESTINATION "${makegood_cmake_dir}"
  NO_SET_AND_CHECK_MACRO)
# Until 1.0 a minor version may change the interface. The headers suit every word size; the library does not.
if(SKBUILD)
  set(makegood_any_arch ARCH_INDEPENDENT)
endif()
write_basic_package_version_file("${PROJECT_BINARY_DIR}/makegoodConfigVersion.cmake"
                                 COMPATIBILITY SameMinorVersion ${makegood_any_arch})
install(FILES "${PROJECT_BINARY_DIR}/makegoodConfig.cmake" "${PROJECT_BINARY_DIR}/makegoodConfigVersion.cmake"
        DESTINATION "${makegood_cmake_dir}")

if(SKBUILD AND TARGET makegood_core)
  install(TARGETS makegood_core LIBRARY DESTINATION .)
endif()
if(NOT SKBUILD)
  install(FILES "${PROJECT_SOURCE_DIR}/LICENSE" DESTINATION "${CMAKE_INSTALL_DOCDIR}")
endif()
