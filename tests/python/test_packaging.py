# SPDX-License-Identifier: MIT
"""The package from outside: what a wheel carries, and that it works where the source tree is not."""

import ast
import importlib.util
import os
import pathlib
import re
import shutil
import subprocess
import sys
import sysconfig
import tarfile
import zipfile

import pytest

import makegood

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = ROOT / "include"
CONSUMER = ROOT / "tests" / "embedding" / "consumer_wheel_headers"
HEADERS = sorted(path.relative_to(INCLUDE).as_posix() for path in INCLUDE.rglob("*.hpp"))

needs_backend = pytest.mark.skipif(
    importlib.util.find_spec("scikit_build_core") is None,
    reason="scikit-build-core is not installed (the Python package index was out of reach)",
)


def run(*command, cwd, **variables):
    """Runs a command away from the source tree; its text is shown when it fails."""
    environment = {key: value for key, value in os.environ.items() if not key.startswith("PYTHON")}
    environment.update(variables)
    done = subprocess.run(
        [str(part) for part in command],
        cwd=cwd,
        env=environment,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        timeout=3000,
    )
    assert done.returncode == 0, f"{' '.join(str(part) for part in command)}\n{done.stdout}"
    return done.stdout


def project_version():
    found = re.search(r'version = "(\d+\.\d+\.\d+)"', (INCLUDE / "makegood" / "version.hpp").read_text())
    assert found, "version.hpp names no version"
    return found[1]


# --- one version, one set of headers ---------------------------------------------------------------------------------


def test_one_version():
    in_pyproject = re.search(r'^version = "([^"]+)"$', (ROOT / "pyproject.toml").read_text(), re.M)
    assert in_pyproject and in_pyproject[1] == project_version()
    assert makegood.__version__ == project_version()


def included_names(header):
    return re.findall(r"^\s*#\s*include\s*[<\"]([^>\"]+)[>\"]", (INCLUDE / header).read_text(), re.M)


def reach(header, seen):
    """Every header outside makegood that `header` brings in, with the chain that does it."""
    for name in included_names(header):
        if name.startswith("makegood/") or (INCLUDE / header).parent.joinpath(name).exists():
            inner = name if name.startswith("makegood/") else (
                (INCLUDE / header).parent.joinpath(name).resolve().relative_to(INCLUDE).as_posix()
            )
            if inner not in seen:
                seen.add(inner)
                yield from ((chain_end, f"{header} > {chain}") for chain_end, chain in reach(inner, seen))
        else:
            yield name, f"{header} > {name}"


# Which layer may bring in what. A core header brings in small standard headers only.
HEAVY_STANDARD = {
    "iostream", "istream", "ostream", "fstream", "sstream", "iomanip", "chrono", "locale", "regex", "filesystem",
    "format", "thread", "future", "random",
}


def allowed(header):
    libraries = set()
    if header == "makegood/working.hpp" or header.startswith("makegood/job/"):
        libraries.add("fmt")
    if header in ("makegood/sensing/fit.hpp", "makegood/air/network.hpp"):
        libraries.add("Eigen")
    if header == "makegood/job/json.hpp":
        libraries.add("nlohmann")
    return libraries


@pytest.mark.parametrize("header", HEADERS)
def test_header_stays_light(header):
    wrong = []
    for name, chain in reach(header, {header}):
        library = name.split("/")[0] if "/" in name else ""
        standard = re.fullmatch(r"[a-z_0-9]+", name) is not None
        if library in allowed(header) or name in {"immintrin.h", "cpuid.h"}:
            continue
        if not standard or (name in HEAVY_STANDARD and not allowed(header)):
            wrong.append(chain)
    assert not wrong, "brings in what its layer may not: " + "; ".join(wrong)


# What formulas do without, so that they stay cheap to compile (figures.py measures it): dear standard headers, and ours above.
DEAR = {
    "algorithm", "cmath", "functional", "memory", "optional", "ranges", "span", "stdexcept", "string", "tuple", "variant", "vector",
}
ABOVE_FORMULAS = {f"makegood/{name}.hpp" for name in ("text", "measured", "reading", "rulebook", "verdict", "document", "scalar/symbol")}


@pytest.mark.parametrize("header", [header for header in HEADERS if header.endswith("/formulas.hpp")])
def test_formulas_need_no_more_than_formulas(header):
    ours = {header}
    wrong = [chain for name, chain in reach(header, ours) if name in DEAR]
    assert not wrong, "brings in what formulas do without: " + "; ".join(wrong)
    assert "makegood/formula.hpp" in ours
    assert not ours & ABOVE_FORMULAS


@pytest.mark.parametrize("library, folder", [("fmt", "fmt"), ("eigen", "Eigen")])
def test_build_names_what_it_uses(library, folder):
    """A library that happens to be on this machine must not be used without CMakeLists.txt saying so, nor be asked
    for in vain."""
    code = [path for top in ("include", "src", "bindings") for path in (ROOT / top).rglob("*.[ch]pp")]
    used = any(re.search(rf"^\s*#\s*include\s*<{folder}/", path.read_text(), re.M) for path in code)
    said = re.search(rf"^set\(makegood_uses_{library} (ON|OFF)\)$", (ROOT / "CMakeLists.txt").read_text(), re.M)
    assert said and (said[1] == "ON") == used


# --- the package as it is imported now (build tree or installed) -------------------------------------------------------


def test_folders_of_this_package():
    assert (pathlib.Path(makegood.get_include()) / "makegood" / "electrical" / "conductors.hpp").is_file()
    assert (pathlib.Path(makegood.get_cmake_dir()) / "makegoodConfig.cmake").is_file()
    package = pathlib.Path(makegood.__file__).parent
    assert (package / "py.typed").is_file()


def build_consumer(folder, include, cmake_dir):
    """A C++ project with nothing of makegood but these two folders: once by hand, once by CMake."""
    folder.mkdir()
    compiler = os.environ.get("CXX") or shutil.which("c++") or shutil.which("g++") or shutil.which("clang++")
    assert compiler, "no C++ compiler"
    run(compiler, "-std=c++20", f"-I{include}", CONSUMER / "main.cpp", "-o", folder / "by_hand", cwd=folder)
    run(folder / "by_hand", cwd=folder)
    cmake = os.environ.get("MAKEGOOD_CMAKE", "cmake")
    generator = ["-G", "Ninja"] if shutil.which("ninja") else []
    run(cmake, *generator, "-S", CONSUMER, "-B", folder / "build", f"-Dmakegood_DIR={cmake_dir}",
        f"-DCMAKE_CXX_COMPILER={compiler}", cwd=folder)
    run(cmake, "--build", folder / "build", cwd=folder)
    run(folder / "build" / "consumer", cwd=folder)


def test_headers_of_this_package_compile(tmp_path):
    build_consumer(tmp_path / "consumer", makegood.get_include(), makegood.get_cmake_dir())


# --- wheels --------------------------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def wheel_build_dir():
    """One folder of object files for the wheels of this file, kept from run to run so that the second is quick."""
    return ROOT / "build" / "test-wheel" / f"{sys.implementation.cache_tag}"


@pytest.fixture(scope="module")
def wheel(tmp_path_factory, wheel_build_dir):
    folder = tmp_path_factory.mktemp("wheel")
    run(sys.executable, "-m", "pip", "wheel", "-q", "--no-deps", "--no-index", "--no-build-isolation",
        "--config-settings", f"build-dir={wheel_build_dir}", "-w", folder, ROOT, cwd=folder)
    (made,) = folder.glob("makegood-*.whl")
    return made


def scratch_python(folder):
    """A virtual environment that sees the packages of this one (NumPy) behind its own, and no source tree."""
    run(sys.executable, "-m", "venv", "--without-pip", folder, cwd=folder.parent)
    python = folder / "bin" / "python"
    site = run(python, "-c", "import sysconfig; print(sysconfig.get_paths()['purelib'])", cwd=folder).strip()
    behind = [sysconfig.get_paths()["purelib"], sysconfig.get_paths()["platlib"], str(pathlib.Path(
        importlib.util.find_spec("numpy").origin).parents[1])]
    pathlib.Path(site, "behind.pth").write_text("".join(f"{path}\n" for path in dict.fromkeys(behind)))
    return python


def install(python, *what, cwd):
    run(sys.executable, "-m", "pip", f"--python={python}", "install", "-q", "--no-deps", "--no-index",
        "--ignore-installed", *what, cwd=cwd)


LOOK = """
import makegood
from importlib.metadata import entry_points, version
print([makegood.__file__, makegood.get_include(), makegood.get_cmake_dir(),
       makegood.electrical.voltage_drop(44.0, 16.0, 22.0),
       [entry.value for entry in entry_points(group="cmake.root") if entry.name == "makegood"],
       version("makegood")])
"""


def look(python, cwd):
    return ast.literal_eval(run(python, "-c", LOOK, cwd=cwd).strip().splitlines()[-1])


@needs_backend
def test_wheel_contents(wheel):
    names = set(zipfile.ZipFile(wheel).namelist())
    for header in HEADERS:
        assert f"makegood/include/{header}" in names
    for name in ("makegoodConfig.cmake", "makegoodConfigVersion.cmake", "makegoodHeadersTargets.cmake"):
        assert f"makegood/lib/cmake/makegood/{name}" in names
    for source in (ROOT / "bindings" / "makegood").rglob("*"):
        if source.suffix in {".py", ".pyi", ".typed"} or source.name == "py.typed":
            assert source.relative_to(ROOT / "bindings").as_posix() in names
    assert any(re.fullmatch(r"makegood/_core\..*so", name) for name in names)
    assert any(name.endswith("/LICENSE") for name in names)
    unwanted = [name for name in names if re.search(r"\.(cpp|a|o|csv|sh)$|__pycache__|tests/", name)]
    assert not unwanted
    top = {name.split("/")[0] for name in names}
    assert top == {"makegood", f"makegood-{project_version()}.dist-info"}


@needs_backend
def test_wheel_outside_the_tree(wheel, tmp_path):
    python = scratch_python(tmp_path / "venv")
    install(python, wheel, cwd=tmp_path)
    file, include, cmake_dir, drop, roots, version = look(python, tmp_path)
    assert file.startswith(str(tmp_path)) and include.startswith(str(tmp_path)) and cmake_dir.startswith(str(tmp_path))
    assert drop == pytest.approx(15.488, abs=1e-12)  # 44 x 16 x 22 / 1000, by hand
    assert roots == ["makegood"]
    assert version == project_version()
    build_consumer(tmp_path / "consumer", include, cmake_dir)
    text = (pathlib.Path(cmake_dir) / "makegoodHeadersTargets.cmake").read_text()
    assert str(ROOT) not in text, "the package of the wheel points into the source tree"
    assert "usage" in run(tmp_path / "venv" / "bin" / "makegood", "--help", cwd=tmp_path).lower()


@needs_backend
def test_editable_install(tmp_path, wheel_build_dir, wheel):
    python = scratch_python(tmp_path / "venv")
    install(python, "--no-build-isolation", "--config-settings", f"build-dir={wheel_build_dir}", "-e", ROOT,
            cwd=tmp_path)
    file, include, cmake_dir, drop, roots, version = look(python, tmp_path)
    assert pathlib.Path(file).resolve() == (ROOT / "bindings" / "makegood" / "__init__.py").resolve()
    assert drop == pytest.approx(15.488, abs=1e-12)
    assert roots == ["makegood"]
    build_consumer(tmp_path / "consumer", include, cmake_dir)


@needs_backend
def test_source_archive_is_complete(tmp_path):
    code = "import sys; from scikit_build_core.build import build_sdist; print(build_sdist(sys.argv[1]))"
    run(sys.executable, "-c", code, tmp_path, cwd=ROOT)
    (made,) = tmp_path.glob("makegood-*.tar.gz")
    with tarfile.open(made) as archive:
        names = {name.partition("/")[2] for name in archive.getnames()}
    wanted = [f"include/{header}" for header in HEADERS]
    wanted += [path.relative_to(ROOT).as_posix() for folder in ("src", "bindings") for path in
               (ROOT / folder).rglob("*") if path.is_file() and path.suffix not in {".pyc", ".so"}]
    wanted += [path.relative_to(ROOT).as_posix() for path in (ROOT / "tests" / "published").glob("*.csv")]  # counted
    wanted += ["CMakeLists.txt", "pyproject.toml", "README.md", "LICENSE"]
    assert not [name for name in wanted if name not in names]
    assert not [name for name in names if name.startswith(("build/", ".venv/", "notebooks/out/"))]
