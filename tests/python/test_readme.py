# SPDX-License-Identifier: MIT
"""The tours of the README are run, and print what the README says."""

import os
import pathlib
import re
import shutil
import subprocess
import sys

import pytest

ROOT = pathlib.Path(__file__).resolve().parents[2]
TEXT = (ROOT / "README.md").read_text(encoding="utf-8")


def tour(language):
    code, shown = re.search(rf"```{language}\n(.*?)```\n\nprints\n\n```text\n(.*?)```", TEXT, re.S).groups()
    return code, shown


def test_python_tour():
    code, shown = tour("python")
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, encoding="utf-8")
    assert done.stdout == shown


def test_cpp_tour(tmp_path):
    compiler = os.environ.get("CXX") or shutil.which("g++") or shutil.which("c++") or shutil.which("clang++")
    if not compiler:
        pytest.skip("no C++ compiler")
    code, shown = tour("cpp")
    source = tmp_path / "tour.cpp"
    source.write_text(code, encoding="utf-8")
    subprocess.run([compiler, "-std=c++20", "-Wall", "-Wextra", "-Werror", f"-I{ROOT / 'include'}", str(source), "-o", str(tmp_path / "tour")], check=True)
    done = subprocess.run([str(tmp_path / "tour")], capture_output=True, text=True, check=True, encoding="utf-8")
    assert done.stdout == shown


def test_order_of_the_first_page():
    """The job, the cautions, the two commands, the tours."""
    places = [TEXT.index(words) for words in ("A sole electrician", "**Cautions.**", "## Two commands", "## One minute in C++", "## One minute in Python")]
    assert places == sorted(places)
    for caution in ("Not a substitute for a competent person", "Local codes and licensed practice", "Prove dead before touching", "certificate"):
        assert caution in TEXT


def test_command_lines():
    run = lambda *a: subprocess.run([sys.executable, "-m", "makegood", *a], capture_output=True, text=True, encoding="utf-8")
    assert "mV/(A·m)" in run("describe", "voltage_drop").stdout
    assert run("describe", "no_such_thing").returncode == 2
    assert "bs7671:2018+a2" in run("rulebooks").stdout
    assert '"circuits"' in run("schema").stdout
    assert run("--version").stdout.strip()
    assert run().returncode == 2


def test_one_version():
    import makegood

    header = (ROOT / "include" / "makegood" / "version.hpp").read_text(encoding="utf-8")
    project = (ROOT / "pyproject.toml").read_text(encoding="utf-8")
    assert re.search(r'version = "([^"]+)"', header).group(1) == makegood.__version__
    assert re.search(r'^version = "([^"]+)"', project, re.M).group(1) == makegood.__version__


def test_core_headers_include_the_standard_library_alone():
    include = ROOT / "include" / "makegood"
    opt_in = {"job/json.hpp": {"nlohmann/json.hpp"}, "sensing/fit.hpp": {"Eigen/Dense"}, "air/network.hpp": {"Eigen/SparseCholesky", "Eigen/SparseCore"}}
    for path in include.rglob("*.hpp"):
        name = path.relative_to(include).as_posix()
        for what in re.findall(r'#include [<"]([^>"]+)[>"]', path.read_text(encoding="utf-8")):
            if what in opt_in.get(name, ()) or (path.parent / what).exists():
                continue
            assert re.fullmatch(r"[a-z_]+", what), f"{name} includes {what}"
            assert what not in ("iostream", "chrono", "locale", "regex", "iomanip", "sstream", "fstream"), f"{name} includes {what}"
