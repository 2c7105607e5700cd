# SPDX-License-Identifier: MIT
# The Python package of the build tree: <build>/python/makegood holds _core, links to every file of bindings/makegood,
# a link to the headers, and the CMake package of the headers: the same shape as an installed wheel.
file(
  GLOB_RECURSE makegood_python_files
  CONFIGURE_DEPENDS
  RELATIVE "${PROJECT_SOURCE_DIR}/bindings/makegood"
  "${PROJECT_SOURCE_DIR}/bindings/makegood/*")
list(FILTER makegood_python_files EXCLUDE REGEX "__pycache__|\\.pyc$|\\.so$")

file(GLOB_RECURSE makegood_python_old LIST_DIRECTORIES false "${makegood_python_dir}/*")
foreach(old IN LISTS makegood_python_old)
  if(IS_SYMLINK "${old}" AND NOT EXISTS "${old}")
    file(REMOVE "${old}") # its source file has gone
  endif()
endforeach()

foreach(file IN LISTS makegood_python_files)
  cmake_path(GET file PARENT_PATH folder)
  file(MAKE_DIRECTORY "${makegood_python_dir}/${folder}")
  file(CREATE_LINK "${PROJECT_SOURCE_DIR}/bindings/makegood/${file}" "${makegood_python_dir}/${file}" SYMBOLIC
       COPY_ON_ERROR)
endforeach()
file(MAKE_DIRECTORY "${makegood_python_dir}")
if(NOT EXISTS "${makegood_python_dir}/include")
  file(CREATE_LINK "${PROJECT_SOURCE_DIR}/include" "${makegood_python_dir}/include" RESULT no_link SYMBOLIC)
  if(no_link)
    file(COPY "${PROJECT_SOURCE_DIR}/include" DESTINATION "${makegood_python_dir}")
  endif()
endif()

set(makegood_tree_cmake_dir "${makegood_python_dir}/lib/cmake/makegood")
configure_package_config_file(
  "${PROJECT_SOURCE_DIR}/src/cmake/makegoodConfig.cmake.in" "${makegood_tree_cmake_dir}/makegoodConfig.cmake"
  INSTALL_DESTINATION lib/cmake/makegood
  NO_SET_AND_CHECK_MACRO)
write_basic_package_version_file(
  "${makegood_tree_cmake_dir}/makegoodConfigVersion.cmake" COMPATIBILITY SameMinorVersion ARCH_INDEPENDENT)
export(
  TARGETS makegood_headers
  NAMESPACE makegood::
  FILE "${makegood_tree_cmake_dir}/makegoodHeadersTargets.cmake")
