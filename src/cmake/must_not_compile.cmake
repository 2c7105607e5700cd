# SPDX-License-Identifier: MIT
# cmake -Dsnippet=<file> "-Dcompiler=<command;with;flags>" -P must_not_compile.cmake
set(ENV{LC_ALL} C) # plain quotes in the messages
file(STRINGS "${snippet}" expected REGEX "^// error: ")
list(LENGTH expected count)
if(NOT count EQUAL 1)
  message(FATAL_ERROR "${snippet}: wants exactly one line '// error: <regular expression>', has ${count}")
endif()
string(REGEX REPLACE "^// error: *" "" expected "${expected}")
# Optional: "// flags: <compiler flags>" for both compilations.
file(STRINGS "${snippet}" flags REGEX "^// flags: ")
string(REGEX REPLACE "^// flags: *" "" flags "${flags}")
separate_arguments(flags UNIX_COMMAND "${flags}")
file(STRINGS "${snippet}" twin REGEX "^#.*MAKEGOOD_MUST_COMPILE")
if(NOT twin)
  message(FATAL_ERROR "${snippet}: has no twin under #ifdef MAKEGOOD_MUST_COMPILE")
endif()

execute_process(
  COMMAND ${compiler} ${flags} -DMAKEGOOD_MUST_COMPILE "${snippet}"
  RESULT_VARIABLE twin_result
  ERROR_VARIABLE twin_text)
if(NOT twin_result EQUAL 0)
  message(FATAL_ERROR "the twin does not compile, so the snippet would fail for a wrong reason:\n${twin_text}")
endif()

execute_process(
  COMMAND ${compiler} ${flags} "${snippet}"
  RESULT_VARIABLE result
  ERROR_VARIABLE text)
if(result EQUAL 0)
  message(FATAL_ERROR "${snippet} compiles, and must not")
endif()
if(NOT text MATCHES "${expected}")
  message(FATAL_ERROR "${snippet} fails for another reason than '${expected}':\n${text}")
endif()
