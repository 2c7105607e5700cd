#!/usr/bin/env bash
# SPDX-License-Identifier: MIT
# Installs makegood into .venv and assesses the demo visit. Works from a fresh Debian 12 upwards: missing tools are
# installed. A second run installs nothing anew unless the sources have changed.
#   bash notebooks/run.sh          writes notebooks/out/assessment.json and the pages report.html, client.html and quote.html beside it
#   MAKEGOOD_OFFLINE=1             the same without the Python package index
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
root=$PWD
# shellcheck source=tests/setup.sh
source tests/setup.sh

ensure_compiler
ensure_cmake
ensure_libraries ccache
make_venv "$root/.venv" \
    "numpy pybind11>=2.12 scikit-build-core>=0.10 matplotlib" \
    "python3-numpy python3-pybind11 pybind11-dev python3-matplotlib"

# Everything that the installed package is made of.
sources=$(find CMakeLists.txt pyproject.toml README.md LICENSE src include bindings -type f \
    ! -path '*/__pycache__/*' -print0 | LC_ALL=C sort -z | xargs -0 sha256sum | sha256sum)
wanted="$VENV_MODE $root $sources"
if [ "$(cat .venv/makegood-installed 2>/dev/null || true)" != "$wanted" ]; then
    say "building and installing makegood"
    rm -f .venv/makegood-installed
    if [ "$VENV_MODE" = index ]; then
        CMAKE_BUILD_PARALLEL_LEVEL=$(jobs) "$VENV_PYTHON" -m pip install -q --disable-pip-version-check \
            --no-build-isolation --no-deps --force-reinstall . </dev/null
    else
        mkdir -p build
        configure build/notebooks -DCMAKE_BUILD_TYPE=Release -DCMAKE_CXX_FLAGS_RELEASE=-O2 -DMAKEGOOD_COMPILED=OFF \
            -DMAKEGOOD_TESTS=OFF -DMAKEGOOD_PYTHON=ON -DMAKEGOOD_WERROR=OFF "-DPython_EXECUTABLE=$VENV_PYTHON"
        "$CMAKE" --build build/notebooks -j "$(jobs)" >&2
        printf '%s\n' "$root/build/notebooks/python" \
            >"$("$VENV_PYTHON" -c 'import sysconfig; print(sysconfig.get_paths()["purelib"])')/makegood.pth"
    fi
    printf '%s\n' "$wanted" >.venv/makegood-installed
fi

mkdir -p notebooks/out
exec env -u PYTHONPATH "$VENV_PYTHON" -m makegood assess notebooks/demo_visit.json \
    --rules bs7671:2018+a2,england-adf-2021,england-adp-2013 \
    --json notebooks/out/assessment.json --html notebooks/out/report.html \
    --client notebooks/out/client.html --quote notebooks/out/quote.html
