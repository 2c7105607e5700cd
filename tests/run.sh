#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Builds makegood with warnings as errors and runs every test, C++ and Python. Works from a fresh Debian 12 upwards:
# missing tools are installed. A second run builds only what has changed.
#   bash tests/run.sh              the last line: N passed, N failed[, N skipped]
#   MAKEGOOD_OFFLINE=1             the same without the Python package index
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.." || exit 1
root=$PWD
# shellcheck source=tests/setup.sh
source tests/setup.sh

passed=0 failed=0 skipped=0
finish() {
    trap - EXIT
    local line="$passed passed, $failed failed"
    if [ "$skipped" -gt 0 ]; then line="$line, $skipped skipped"; fi
    printf '%s\n' "$line"
    [ "$failed" -eq 0 ] && [ "$passed" -gt 0 ]
    exit
}
# Whatever ends this run early is a failure, and is counted.
trap 'failed=$((failed + 1)); finish' EXIT

ensure_compiler
ensure_cmake
ensure_libraries doctest-dev nlohmann-json3-dev ccache
make_venv "$root/build/venv" \
    "numpy pybind11>=2.12 scikit-build-core>=0.10 pytest mpmath scipy hypothesis mypy jsonschema matplotlib" \
    "python3-numpy python3-pybind11 pybind11-dev python3-pytest python3-mpmath python3-scipy python3-hypothesis mypy python3-jsonschema python3-matplotlib"

build=build/tests
say "building in $build"
configure "$build" -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE=-O2 -DCMAKE_EXPORT_COMPILE_COMMANDS=ON \
    -DMAKEGOOD_COMPILED=ON -DMAKEGOOD_TESTS=ON -DMAKEGOOD_PYTHON=ON -DMAKEGOOD_WERROR=ON \
    "-DPython_EXECUTABLE=$VENV_PYTHON" || exit 1
"$CMAKE" --build "$build" -j "$(jobs)" || exit 1
results=$build/results
rm -rf "$results"
mkdir -p "$results"

# 1. The C++ tests: each test case of doctest is one test.
say "C++ tests"
"$build/tests/makegood_tests" 2>&1 | tee "$results/cpp.txt"
code=${PIPESTATUS[0]}
summary=$(sed -n 's/.*test cases: *\([0-9]*\) *| *\([0-9]*\) passed *| *\([0-9]*\) failed *| *\([0-9]*\) skipped.*/\2 \3 \4/p' \
    "$results/cpp.txt" | tail -n 1)
if [ -n "$summary" ]; then
    read -r p f s <<<"$summary"
    if [ "$code" -ne 0 ] && [ "$f" -eq 0 ]; then f=1; fi
else
    say "the C++ tests ended with $code and no summary"
    p=0 f=1 s=0
fi
passed=$((passed + p)) failed=$((failed + f)) skipped=$((skipped + s))

# count FILE: passed, failed and skipped of a JUnit file; a missing or empty one is one failure.
count() {
    "$VENV_PYTHON" - "$1" <<'PYTHON' || echo "0 1 0"
import sys, xml.etree.ElementTree as tree
p = f = s = 0
for case in tree.parse(sys.argv[1]).iter("testcase"):
    kinds = {child.tag for child in case}
    if kinds & {"failure", "error"} or case.get("status") == "fail":
        f += 1
    elif "skipped" in kinds or case.get("status") in ("notrun", "disabled"):
        s += 1
    else:
        p += 1
print(p, f if p + f + s else 1, s)
PYTHON
}

# 2. What must and must not compile, and projects that use makegood from outside.
say "build and embedding tests"
"$CTEST" --test-dir "$build" -LE '^cpp$' --no-tests=error --output-on-failure -j 2 \
    --output-junit "$root/$results/ctest.xml"
code=$?
read -r p f s <<<"$(count "$results/ctest.xml")"
if [ "$code" -ne 0 ] && [ "$f" -eq 0 ]; then f=1; fi
passed=$((passed + p)) failed=$((failed + f)) skipped=$((skipped + s))

# 3. The Python tests, against the package of the build tree.
say "Python tests"
PYTHONPATH=$root/$build/python PYTHONNOUSERSITE=1 MAKEGOOD_CMAKE=$CMAKE \
    "$VENV_PYTHON" -m pytest -q tests/python "--junitxml=$results/python.xml" "--basetemp=$root/$build/scratch"
code=$?
read -r p f s <<<"$(count "$results/python.xml")"
if [ "$code" -ne 0 ] && [ "$f" -eq 0 ]; then f=1; fi
passed=$((passed + p)) failed=$((failed + f)) skipped=$((skipped + s))

finish
