# SPDX-License-Identifier: MIT
# Configures, builds and runs one project that uses makegood from outside:
# cmake -Dsource= -Dbuild= -Dgenerator= -Dcompiler= -Dlauncher= -Dprefix= -Dmakegood_source= -P consumer.cmake
# A build folder of an earlier run is configured afresh, since a stale cache could hide a broken package.
function(step)
  execute_process(COMMAND ${ARGV} RESULT_VARIABLE result OUTPUT_VARIABLE text ERROR_VARIABLE text)
  if(NOT result EQUAL 0)
    list(JOIN ARGV " " line)
    message(FATAL_ERROR "${line}\n${text}\nended with ${result}")
  endif()
endfunction()

file(REMOVE_RECURSE "${build}")
step("${CMAKE_COMMAND}"
     -S "${source}"
     -B "${build}"
     -G "${generator}"
     "-DCMAKE_CXX_COMPILER=${compiler}"
     "-DCMAKE_CXX_COMPILER_LAUNCHER=${launcher}"
     "-DCMAKE_PREFIX_PATH=${prefix}"
     "-DMAKEGOOD_SOURCE=${makegood_source}")
step("${CMAKE_COMMAND}" --build "${build}")
step("${build}/consumer")
