# SPDX-License-Identifier: MIT
# Where a dependency comes from: an installed package first; a pinned release archive only if MAKEGOOD_ALLOW_DOWNLOADS
# is on; otherwise a message that says what to install. makegood::headers needs none of these.
include(FetchContent)

# One archive, held to its SHA-256.
macro(makegood_fetch name url sha256)
  FetchContent_Declare(
    ${name}
    URL "${url}"
    URL_HASH "SHA256=${sha256}"
    DOWNLOAD_EXTRACT_TIMESTAMP ON ${ARGN})
  FetchContent_MakeAvailable(${name})
endmacro()

# The same for a library of headers alone: its own CMakeLists.txt is not read (a subfolder that does not exist is named),
# a plain target with the given name and include folder is made instead.
macro(makegood_fetch_headers name target folder url sha256)
  makegood_fetch(${name} "${url}" ${sha256} SOURCE_SUBDIR not-read)
  add_library(makegood_${name} INTERFACE)
  add_library(${target} ALIAS makegood_${name})
  target_include_directories(makegood_${name} SYSTEM INTERFACE "$<BUILD_INTERFACE:${${name}_SOURCE_DIR}${folder}>")
endmacro()

function(makegood_missing what debian)
  message(
    FATAL_ERROR
      "makegood needs ${what}, and it was not found.\n"
      "  Debian, Ubuntu:  apt-get install ${debian}\n"
      "  elsewhere:       install ${what} with its CMake package and name its folder in CMAKE_PREFIX_PATH\n"
      "  or let it be fetched, pinned by hash:  -DMAKEGOOD_ALLOW_DOWNLOADS=ON")
endfunction()

macro(makegood_need_fmt)
  if(NOT TARGET fmt::fmt-header-only)
    find_package(fmt 9 QUIET CONFIG)
  endif()
  if(NOT TARGET fmt::fmt-header-only)
    find_package(fmt QUIET CONFIG) # a later major version will do as well
  endif()
  if(NOT TARGET fmt::fmt-header-only)
    if(MAKEGOOD_ALLOW_DOWNLOADS)
      set(FMT_INSTALL OFF)
      if(MAKEGOOD_INSTALL AND NOT SKBUILD)
        set(FMT_INSTALL ON) # an installed makegood::makegood needs it beside it; a wheel carries headers of ours alone
      endif()
      makegood_fetch(fmt "https://github.com/fmtlib/fmt/archive/9.1.0.tar.gz"
                     5dea48d1fcddc3ec571ce2058e13910a0d4a6bab4cc09a809d8b1dd1c88ae6f2)
      set_target_properties(fmt fmt-header-only PROPERTIES SYSTEM ON) # its warnings are not ours
    else()
      makegood_missing("fmt (9.1 or later)" "libfmt-dev")
    endif()
  endif()
endmacro()

macro(makegood_need_eigen)
  if(NOT TARGET Eigen3::Eigen)
    find_package(Eigen3 3.4 QUIET CONFIG)
  endif()
  if(NOT TARGET Eigen3::Eigen)
    find_package(Eigen3 QUIET CONFIG)
  endif()
  if(NOT TARGET Eigen3::Eigen)
    if(MAKEGOOD_ALLOW_DOWNLOADS)
      makegood_fetch_headers(
        eigen Eigen3::Eigen "" "https://gitlab.com/libeigen/eigen/-/archive/3.4.0/eigen-3.4.0.tar.bz2"
        b4c198460eba6f28d34894e3a5710998818515104d6e74e5cc331ce31e46e626)
    else()
      makegood_missing("Eigen (3.4 or later)" "libeigen3-dev")
    endif()
  endif()
endmacro()

macro(makegood_need_doctest)
  if(NOT TARGET doctest::doctest)
    find_package(doctest QUIET CONFIG)
  endif()
  if(NOT TARGET doctest::doctest)
    if(MAKEGOOD_ALLOW_DOWNLOADS)
      makegood_fetch_headers(
        doctest doctest::doctest "" "https://github.com/doctest/doctest/archive/refs/tags/v2.4.9.tar.gz"
        19b2df757f2f3703a5e63cee553d85596875f06d91a3333acd80a969ef210856)
    else()
      makegood_missing("doctest (2.4 or later)" "doctest-dev")
    endif()
  endif()
endmacro()

# Optional: the C++ reader of JSON is tested where nlohmann_json is there. Sets makegood_json_found.
macro(makegood_want_json)
  if(NOT TARGET nlohmann_json::nlohmann_json)
    find_package(nlohmann_json 3.11 QUIET CONFIG)
  endif()
  if(NOT TARGET nlohmann_json::nlohmann_json AND MAKEGOOD_ALLOW_DOWNLOADS)
    makegood_fetch_headers(
      nlohmann_json nlohmann_json::nlohmann_json "/include"
      "https://github.com/nlohmann/json/archive/refs/tags/v3.11.2.tar.gz"
      d69f9deb6a75e2580465c6c4c5111b89c4dc2fa94e3a85fcd2ffcd9a143d9273)
  endif()
  if(TARGET nlohmann_json::nlohmann_json)
    set(makegood_json_found ON)
  else()
    set(makegood_json_found OFF)
    message(STATUS "makegood: nlohmann_json not found, job/json.hpp is not tested (Debian: nlohmann-json3-dev)")
  endif()
endmacro()

# An interpreter alone, for what is generated before compiling.
macro(makegood_need_interpreter)
  if(NOT Python_Interpreter_FOUND)
    find_package(Python 3.10 QUIET COMPONENTS Interpreter)
  endif()
  if(NOT Python_Interpreter_FOUND)
    makegood_missing("Python (3.10 or later, standard library only)" "python3")
  endif()
endmacro()

# The interpreter with its headers and NumPy, then pybind11: the copy that belongs to that interpreter first, since it
# has to suit the NumPy beside it.
macro(makegood_need_python)
  find_package(Python 3.10 QUIET COMPONENTS Interpreter Development.Module NumPy)
  if(NOT Python_FOUND)
    message(
      FATAL_ERROR
        "makegood needs Python 3.10 or later with its headers and NumPy for the extension.\n"
        "  Debian, Ubuntu:  apt-get install python3-dev python3-numpy\n"
        "  elsewhere:       name an interpreter that has both:  -DPython_EXECUTABLE=...\n"
        "  (interpreter: ${Python_EXECUTABLE}, headers: ${Python_INCLUDE_DIRS}, NumPy: ${Python_NumPy_INCLUDE_DIRS})")
  endif()
  if(NOT TARGET pybind11::module)
    execute_process(
      COMMAND "${Python_EXECUTABLE}" -m pybind11 --cmakedir
      OUTPUT_VARIABLE makegood_pybind11_hint
      OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
    set(PYBIND11_FINDPYTHON ON)
    find_package(pybind11 2.10 QUIET CONFIG HINTS "${makegood_pybind11_hint}")
  endif()
  if(NOT TARGET pybind11::module)
    if(MAKEGOOD_ALLOW_DOWNLOADS)
      set(PYBIND11_FINDPYTHON ON)
      set(PYBIND11_INSTALL OFF)
      makegood_fetch(pybind11 "https://github.com/pybind/pybind11/archive/refs/tags/v2.13.6.tar.gz"
                     e08cb87f4773da97fa7b5f035de8763abc656d87d5773e62f6da0587d1f0ec20)
    else()
      makegood_missing("pybind11 (2.10 or later)" "pybind11-dev python3-pybind11")
    endif()
  endif()
endmacro()
