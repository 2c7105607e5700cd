# shellcheck shell=bash disable=SC2034
# SPDX-License-Identifier: MIT
# What tests/run.sh and notebooks/run.sh share: finding or installing the tools, and a Python environment in the tree.
# To be sourced. Nothing is written outside the tree but packages of the system, and those only where one is missing.
#
# MAKEGOOD_OFFLINE=1  do without the Python package index: Debian's own packages, and the build by CMake alone.

say() { printf '== %s\n' "$*" >&2; }
die() {
    printf 'makegood: %s\n' "$*" >&2
    exit 1
}

# Kept in the tree, so that nothing is left elsewhere, and small.
if [ -z "${CCACHE_DIR:-}" ]; then
    export CCACHE_DIR=$PWD/build/ccache CCACHE_MAXSIZE=500M CCACHE_BASEDIR=$PWD
fi

# --- packages of the system --------------------------------------------------------------------------------------

as_root() {
    if [ "$(id -u)" -eq 0 ]; then
        "$@"
    elif command -v sudo >/dev/null 2>&1; then
        sudo "$@"
    else
        return 1
    fi
}

# Prints those of its arguments that are not installed.
missing_of() {
    local package
    for package in "$@"; do
        if [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)" != installed ]; then
            printf '%s\n' "$package"
        fi
    done
}

# apt_install PACKAGE...: installs those that are missing; nothing to do, nothing asked.
apt_install() {
    local missing options=(-y -q --no-install-recommends -o DPkg::Lock::Timeout=600)
    command -v apt-get >/dev/null 2>&1 || return 1
    mapfile -t missing < <(missing_of "$@")
    [ "${#missing[@]}" -gt 0 ] || return 0
    say "installing ${missing[*]}"
    # A list of packages that is not there yet, or is old, is the usual reason for a first refusal.
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install "${options[@]}" "${missing[@]}" \
        </dev/null >/dev/null 2>&1 && return 0
    as_root apt-get update -q -o DPkg::Lock::Timeout=600 </dev/null >&2 || return 1
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install "${options[@]}" "${missing[@]}" </dev/null >&2
}

# need WHAT PACKAGE...: the same, and the end of the run where it cannot be had.
need() {
    local what=$1
    shift
    apt_install "$@" || die "$what: could not be installed; by hand, on Debian: apt-get install $(missing_of "$@" | tr '\n' ' ')"
}

# at_least HAVE WANTED: is version HAVE >= WANTED?
at_least() { [ "$(printf '%s\n%s\n' "$2" "$1" | sort -V | head -n 1)" = "$2" ]; }

ensure_compiler() {
    local compiler
    if [ -n "${CXX:-}" ]; then return; fi
    for compiler in c++ g++ clang++; do
        if command -v "$compiler" >/dev/null 2>&1; then return; fi
    done
    need "a C++20 compiler" g++
}

cmake_good() {
    local version
    version=$("$1" --version 2>/dev/null | sed -n 's/^cmake version \([0-9.]*\).*/\1/p') || return 1
    [ -n "$version" ] && at_least "$version" 3.25
}

# Sets CMAKE and CTEST (a pair), and GENERATOR (options for CMake).
ensure_cmake() {
    CMAKE=cmake
    if ! cmake_good cmake; then
        need "CMake 3.25 or later" cmake
        CMAKE=/usr/bin/cmake
        cmake_good "$CMAKE" || die "CMake 3.25 or later is needed; this system's own is older"
    fi
    CTEST=${CMAKE%cmake}ctest
    if ! ninja --version >/dev/null 2>&1 && ! make --version >/dev/null 2>&1; then
        need "a build tool" ninja-build
    fi
    GENERATOR=()
    if ninja --version >/dev/null 2>&1; then GENERATOR=(-G Ninja); fi
}

# The libraries that we compile against, and what makes building quicker. What cannot be installed may stand elsewhere:
# CMake looks, and says what is missing.
ensure_libraries() {
    command -v apt-get >/dev/null 2>&1 || return 0
    if grep -q '^set(makegood_uses_fmt ON)' CMakeLists.txt; then set -- "$@" libfmt-dev; fi
    if grep -q '^set(makegood_uses_eigen ON)' CMakeLists.txt; then set -- "$@" libeigen3-dev; fi
    apt_install "$@" || say "could not install: $(missing_of "$@" | tr '\n' ' ')"
}

# Jobs of a build: as many as there are cores, but no more than one for each 2 GB of memory.
jobs() {
    local cores memory
    cores=$(nproc 2>/dev/null || echo 2)
    memory=$(awk '/MemAvailable/ {print int($2 / 2000000)}' /proc/meminfo 2>/dev/null || echo 1)
    if [ "${memory:-0}" -lt 1 ]; then memory=1; fi
    if [ "$cores" -gt "$memory" ]; then cores=$memory; fi
    echo "$cores"
}

# --- Python ------------------------------------------------------------------------------------------------------

python_good() {
    "$1" - >/dev/null 2>&1 <<'PYTHON'
import os, sys, sysconfig
assert sys.version_info >= (3, 10)
import ensurepip, venv
assert os.path.exists(os.path.join(sysconfig.get_paths()["include"], "Python.h"))
PYTHON
}

# Sets PYTHON: an interpreter of 3.10 or later with venv and its C headers, not one of another virtual environment.
ensure_python() {
    local candidate
    PYTHON=
    if [ "${MAKEGOOD_OFFLINE:-}" != 1 ]; then
        for candidate in python3 python3.13 python3.12 python3.11 python3.10 /usr/bin/python3; do
            if python_good "$candidate"; then
                PYTHON=$("$candidate" -c 'import os, sys; print(getattr(sys, "_base_executable", "") or sys.executable)')
                break
            fi
        done
    fi
    if [ -z "$PYTHON" ]; then
        system_python
    fi
}

system_python() {
    if ! python_good /usr/bin/python3; then
        need "Python 3.10 or later with venv and its headers" python3 python3-venv python3-dev
        python_good /usr/bin/python3 || die "Python 3.10 or later with venv and its headers is needed"
    fi
    PYTHON=/usr/bin/python3
}

# make_venv FOLDER "PIP PACKAGES" "DEBIAN PACKAGES": a virtual environment with these packages, from the Python package
# index or, where that is out of reach, made over the system's Python with Debian's packages. Sets VENV_PYTHON and
# VENV_MODE (index or debian). A finished environment is used again as it is.
make_venv() {
    local folder=$1 from_index=$2 from_debian=$3 wanted have=
    VENV_PYTHON=$folder/bin/python
    wanted="$folder $from_index"
    if [ -f "$folder/makegood-stamp" ]; then have=$(cat "$folder/makegood-stamp"); fi
    if "$VENV_PYTHON" -c 'import numpy' >/dev/null 2>&1; then
        if [ "$have" = "debian $wanted" ]; then
            VENV_MODE=debian
            return
        elif [ "$have" = "index $wanted" ] && [ "${MAKEGOOD_OFFLINE:-}" != 1 ]; then
            VENV_MODE=index
            return
        fi
    fi
    rm -rf "$folder"
    mkdir -p "$(dirname "$folder")"
    ensure_python
    if [ "${MAKEGOOD_OFFLINE:-}" != 1 ]; then
        say "making $folder with $PYTHON"
        # shellcheck disable=SC2086  # a list of words
        if "$PYTHON" -m venv "$folder" &&
            "$VENV_PYTHON" -m pip install -q --disable-pip-version-check --retries 1 $from_index </dev/null >&2; then
            VENV_MODE=index
            printf 'index %s\n' "$wanted" >"$folder/makegood-stamp"
            return
        fi
        say "the Python package index is out of reach: Debian's packages instead (delete $folder to try again)"
        rm -rf "$folder"
    fi
    system_python
    # shellcheck disable=SC2086  # a list of words
    need "Python packages of the system" $from_debian
    say "making $folder with $PYTHON and the packages of the system"
    "$PYTHON" -m venv --system-site-packages "$folder" || die "could not make $folder"
    VENV_MODE=debian
    printf 'debian %s\n' "$wanted" >"$folder/makegood-stamp"
}

# configure FOLDER OPTION...: configures, and once more from nothing if an old cache is in the way.
configure() {
    local folder=$1
    shift
    if ! "$CMAKE" -S . -B "$folder" "${GENERATOR[@]}" "$@" >"$folder.log" 2>&1; then
        rm -rf "$folder"
        if ! "$CMAKE" -S . -B "$folder" "${GENERATOR[@]}" "$@" >"$folder.log" 2>&1; then
            cat "$folder.log" >&2
            return 1
        fi
    fi
}
