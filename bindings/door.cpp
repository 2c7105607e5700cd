// SPDX-License-Identifier: MIT
// Fast call by the C API: plain numbers, by position or keyword, without an exception crossing the border.
// Everything else (arrays, Measured, readings) goes to makegood._slow, which knows NumPy; a ufunc is made on first use.
#include "door.hpp"
#include <structmember.h>
#include <algorithm>
#include <cfenv>
#include <new>
#define PY_ARRAY_UNIQUE_SYMBOL makegood_array_api
#define PY_UFUNC_UNIQUE_SYMBOL makegood_ufunc_api
#include <numpy/ndarrayobject.h>
#include <numpy/ufuncobject.h>

namespace py = pybind11;

namespace makegood::python {

namespace {

errors the_errors;

struct loop_data {
  const entry* what;
  bool nan_for_errors;
};

struct door {
  PyObject_HEAD
  vectorcallfunc vectorcall;
  const entry* what;
  PyObject* names;        // tuple of interned argument names
  PyObject* parameters;   // the same; of a check with "rulebook" among them
  std::size_t book;       // where the rulebook stands
  PyObject* ufuncs[2];    // raising, NaN for errors
  loop_data loops[2];
  const argument* args;
  std::size_t count;
  bool has_words;         // a word is among the arguments
  double (*checked)(const double*);
};

/// How many threads the array call in hand may use; set around it by makegood._slow.
thread_local unsigned threads_in_hand = 1;

PyObject* slow_function(const char* name) {
  PyObject* module = PyImport_ImportModule("makegood._slow");
  if (!module) return nullptr;
  PyObject* f = PyObject_GetAttrString(module, name);
  Py_DECREF(module);
  return f;
}

PyObject* raise_fault(const door* d, fault why, const double* x) {
  const message text = d->what->formula.refusal(d->what->formula.self, why, x);
  if (PyObject* words = PyUnicode_DecodeUTF8(text.c_str(), static_cast<Py_ssize_t>(text.view().size()), nullptr)) {
    PyErr_SetObject(why.kind == fault::what::relation ? the_errors.relation : the_errors.range, words);
    Py_DECREF(words);
  }
  return nullptr;
}

/// What is wrong with arguments that have no result.
PyObject* raise_refused(const door* d, const double* x) {
  const auto& info = d->what->formula;
  const fault bad = info.check(info.self, x);
  return raise_fault(d, bad ? bad : fault{fault::what::no_result, -1}, x);
}

enum class taken { number, other, refused };

void refuse_type(const door* d, std::size_t i, PyObject* o) {
  const argument& a = d->what->args()[i];
  if (a.table) {
    PyErr_Format(PyExc_TypeError, "%s: %s must be one of %s, not %.100s", std::string(d->what->name()).c_str(),
                 std::string(a.name).c_str(), detail::keys_text(*a.table).c_str(), Py_TYPE(o)->tp_name);
  } else {
    const std::string unit = a.unit.symbol.empty() ? std::string() : " in " + std::string(a.unit.symbol);
    PyErr_Format(PyExc_TypeError, "%s: %s must be a number%s, not %.100s", std::string(d->what->name()).c_str(),
                 std::string(a.name).c_str(), unit.c_str(), Py_TYPE(o)->tp_name);
  }
}

/// A plain number or a known word; other: an array, a Measured ... ; refused: a Python error is set.
taken take_other(const door* d, std::size_t i, PyObject* o, double* x);
inline taken take(const door* d, std::size_t i, PyObject* o, double* x) {
  if (PyFloat_CheckExact(o) && !d->args[i].table) [[likely]] {
    *x = PyFloat_AS_DOUBLE(o);
    return taken::number;
  }
  return take_other(d, i, o, x);
}
taken take_other(const door* d, std::size_t i, PyObject* o, double* x) {
  const argument& a = d->args[i];
  if (a.table) {
    std::string key;
    if (PyUnicode_Check(o)) {
      Py_ssize_t size = 0;
      const char* text = PyUnicode_AsUTF8AndSize(o, &size);
      if (!text) return taken::refused;
      key.assign(text, static_cast<std::size_t>(size));
    } else if (a.table->of_numbers() && (PyFloat_Check(o) || (PyLong_Check(o) && !PyBool_Check(o)))) {
      const double number = PyFloat_AsDouble(o);
      if (number == -1.0 && PyErr_Occurred()) return taken::refused;
      key = number_text(number, 12);
    } else if (PyFloat_Check(o) || PyLong_Check(o) || o == Py_None) {
      refuse_type(d, i, o);
      return taken::refused;
    } else {
      return taken::other;
    }
    const int row = a.table->find(key);
    if (row < 0) {
      PyErr_Format(the_errors.range, "%s: %s = \"%.100s\" is not one of %s", std::string(d->what->name()).c_str(),
                   std::string(a.name).c_str(), key.c_str(), detail::keys_text(*a.table).c_str());
      return taken::refused;
    }
    *x = row;
    return taken::number;
  }
  if (PyBool_Check(o) || o == Py_None || PyUnicode_Check(o) || PyBytes_Check(o) || PyByteArray_Check(o) || PyComplex_Check(o)) {
    refuse_type(d, i, o);
    return taken::refused;
  }
  if (PyLong_Check(o)) {
    *x = PyLong_AsDouble(o);
    if (*x == -1.0 && PyErr_Occurred()) {
      PyErr_Clear();
      PyErr_Format(the_errors.range, "%s: %s is too large a number", std::string(d->what->name()).c_str(), std::string(a.name).c_str());
      return taken::refused;
    }
    return taken::number;
  }
  if (PyFloat_Check(o)) {
    *x = PyFloat_AS_DOUBLE(o);
    return taken::number;
  }
  return taken::other;
}

/// The position of a keyword among the arguments, or -1.
inline Py_ssize_t position(PyObject* names, PyObject* keyword, Py_ssize_t likely) {
  const Py_ssize_t n = PyTuple_GET_SIZE(names);
  if (likely < n && PyTuple_GET_ITEM(names, likely) == keyword) [[likely]] return likely;  // in the order of the descriptor
  for (Py_ssize_t i = 0; i < n; ++i)
    if (PyTuple_GET_ITEM(names, i) == keyword) return i;
  for (Py_ssize_t i = 0; i < n; ++i) {
    const int same = PyObject_RichCompareBool(PyTuple_GET_ITEM(names, i), keyword, Py_EQ);
    if (same != 0) return same > 0 ? i : -2;
  }
  return -1;
}

PyObject* call_slow(door* d, PyObject* const* args, std::size_t nargsf, PyObject* kwnames) {
  const Py_ssize_t n = PyVectorcall_NARGS(nargsf);
  const Py_ssize_t k = kwnames ? PyTuple_GET_SIZE(kwnames) : 0;
  PyObject* f = slow_function("call");
  if (!f) return nullptr;
  PyObject* positional = PyTuple_New(n);
  PyObject* named = PyDict_New();
  PyObject* result = nullptr;
  if (positional && named) {
    for (Py_ssize_t i = 0; i < n; ++i) PyTuple_SET_ITEM(positional, i, Py_NewRef(args[i]));
    bool good = true;
    for (Py_ssize_t i = 0; i < k && good; ++i) good = PyDict_SetItem(named, PyTuple_GET_ITEM(kwnames, i), args[n + i]) == 0;
    if (good) result = PyObject_CallFunctionObjArgs(f, reinterpret_cast<PyObject*>(d), positional, named, nullptr);
  }
  Py_XDECREF(positional);
  Py_XDECREF(named);
  Py_DECREF(f);
  return result;
}

bool numpy_is_here = false;  // set once the array interface is there

/// Plain numbers and plain arrays of doubles go to the ufunc at once. Null without a Python error: the slow path must look.
PyObject* call_arrays(door* d, PyObject* const* args, std::size_t nargsf, PyObject* kwnames) {
  PyObject* const u = d->ufuncs[0];
  if (!numpy_is_here || !u) return nullptr;
  const auto n = static_cast<std::size_t>(PyVectorcall_NARGS(nargsf));
  const std::size_t k = kwnames ? static_cast<std::size_t>(PyTuple_GET_SIZE(kwnames)) : 0;
  static PyObject* const out_keyword = Py_BuildValue("(s)", "out");
  PyObject* in[most_arguments + 1] = {};  // the last one used is out=
  if (n > d->count) return nullptr;
  for (std::size_t i = 0; i < n; ++i) in[i] = args[i];
  for (std::size_t j = 0; j < k; ++j) {
    PyObject* const keyword = PyTuple_GET_ITEM(kwnames, static_cast<Py_ssize_t>(j));
    Py_ssize_t p = position(d->names, keyword, static_cast<Py_ssize_t>(n + j));
    if (p == -1 && out_keyword && PyArray_CheckExact(args[n + j]) && PyUnicode_Compare(keyword, PyTuple_GET_ITEM(out_keyword, 0)) == 0)
      p = static_cast<Py_ssize_t>(d->count);
    if (p < 0 || in[p]) return nullptr;
    in[p] = args[n + j];
  }
  PyObject* made[most_arguments];  // defaults
  std::size_t made_count = 0;
  bool plain = true;
  for (std::size_t i = 0; i < d->count && plain; ++i) {
    if (!in[i]) {
      plain = d->args[i].optional;
      if (!plain) break;
      in[i] = made[made_count++] = PyFloat_FromDouble(d->args[i].fallback);
      plain = in[i] != nullptr;
    } else if (d->args[i].table) {
      plain = false;
    } else if (!PyFloat_CheckExact(in[i]) && !PyLong_CheckExact(in[i])) {
      plain = PyArray_CheckExact(in[i]) && PyArray_TYPE(reinterpret_cast<PyArrayObject*>(in[i])) == NPY_DOUBLE;
    }
  }
  PyObject* result = plain ? PyObject_Vectorcall(u, in, d->count, in[d->count] ? out_keyword : nullptr) : nullptr;
  while (made_count) Py_XDECREF(made[--made_count]);
  if (!result) {
    if (PyErr_Occurred() && !PyErr_ExceptionMatches(the_errors.base)) PyErr_Clear();  // shapes: the slow path names them
    return nullptr;
  }
  if (PyFloat_Check(result) && !PyFloat_CheckExact(result)) {
    PyObject* number = PyFloat_FromDouble(PyFloat_AS_DOUBLE(result));
    Py_DECREF(result);
    return number;
  }
  return result;
}
PyObject* call_other(door* d, PyObject* const* args, std::size_t nargsf, PyObject* kwnames) {
  PyObject* result = call_arrays(d, args, nargsf, kwnames);
  return result || PyErr_Occurred() ? result : call_slow(d, args, nargsf, kwnames);
}

/// Exactly as many floats as there are arguments, keywords in the order of the descriptor: the usual call.
inline bool take_floats(const door* d, PyObject* const* args, std::size_t n, PyObject* kwnames, double* x) {
  const std::size_t named = kwnames ? static_cast<std::size_t>(PyTuple_GET_SIZE(kwnames)) : 0;
  if (n + named != d->count || d->has_words) return false;
  for (std::size_t j = 0; j < named; ++j)
    if (PyTuple_GET_ITEM(kwnames, static_cast<Py_ssize_t>(j)) != PyTuple_GET_ITEM(d->names, static_cast<Py_ssize_t>(n + j))) return false;
  for (std::size_t i = 0; i < d->count; ++i) {
    if (!PyFloat_CheckExact(args[i])) return false;
    x[i] = PyFloat_AS_DOUBLE(args[i]);
  }
  return true;
}

PyObject* call(PyObject* self, PyObject* const* args, std::size_t nargsf, PyObject* kwnames) {
  auto* d = reinterpret_cast<door*>(self);
  if (!d->checked) return call_slow(d, args, nargsf, kwnames);
  const std::size_t count = d->count;
  const auto n = static_cast<std::size_t>(PyVectorcall_NARGS(nargsf));
  double x[most_arguments];
  if (take_floats(d, args, n, kwnames, x)) [[likely]] {
    const double y = d->checked(x);
    if (is_finite(y)) [[likely]] return PyFloat_FromDouble(y);
    return raise_refused(d, x);
  }
  unsigned set = 0;
  if (n > count) {
    PyErr_Format(PyExc_TypeError, "%s() takes at most %zu arguments (%zu given)", std::string(d->what->name()).c_str(), count, n);
    return nullptr;
  }
  for (std::size_t i = 0; i < n; ++i) {
    const taken t = take(d, i, args[i], &x[i]);
    if (t == taken::refused) return nullptr;
    if (t == taken::other) return call_other(d, args, nargsf, kwnames);
    set |= 1u << i;
  }
  if (kwnames) {
    const Py_ssize_t k = PyTuple_GET_SIZE(kwnames);
    for (Py_ssize_t j = 0; j < k; ++j) {
      PyObject* keyword = PyTuple_GET_ITEM(kwnames, j);
      const Py_ssize_t p = position(d->names, keyword, static_cast<Py_ssize_t>(n) + j);
      if (p == -2) return nullptr;
      if (p < 0) return call_slow(d, args, nargsf, kwnames);  // out=, where=, errors= ... or a misspelt name
      const auto i = static_cast<std::size_t>(p);
      if (set & (1u << i)) {
        PyErr_Format(PyExc_TypeError, "%s() got multiple values for argument '%U'", std::string(d->what->name()).c_str(), keyword);
        return nullptr;
      }
      const taken t = take(d, i, args[n + static_cast<std::size_t>(j)], &x[i]);
      if (t == taken::refused) return nullptr;
      if (t == taken::other) return call_other(d, args, nargsf, kwnames);
      set |= 1u << i;
    }
  }
  if (set != (1u << count) - 1u) {
    for (std::size_t i = 0; i < count; ++i) {
      if (set & (1u << i)) continue;
      if (!d->args[i].optional) {
        PyErr_Format(PyExc_TypeError, "%s() missing argument '%s'", std::string(d->what->name()).c_str(), std::string(d->args[i].name).c_str());
        return nullptr;
      }
      x[i] = d->args[i].fallback;
    }
  }
  const double y = d->checked(x);
  if (is_finite(y)) [[likely]] return PyFloat_FromDouble(y);
  return raise_refused(d, x);
}

/// Runs C++ that may throw, and turns what it throws into a Python error.
template <class F>
auto guarded(F f) -> decltype(f()) {
  try {
    return f();
  } catch (py::error_already_set& e) {
    e.restore();
  } catch (const range_error& e) {
    PyErr_SetString(the_errors.range, e.what());
  } catch (const relation_error& e) {
    PyErr_SetString(the_errors.relation, e.what());
  } catch (const document_error& e) {
    PyErr_SetString(the_errors.document, e.what());
  } catch (const rule_error& e) {
    PyErr_SetString(the_errors.rule, e.what());
  } catch (const convergence_error& e) {
    PyErr_SetString(the_errors.convergence, e.what());
  } catch (const py::type_error& e) {
    PyErr_SetString(PyExc_TypeError, e.what());
  } catch (const std::bad_alloc&) {
    PyErr_NoMemory();
  } catch (const std::exception& e) {
    PyErr_SetString(the_errors.base, e.what());
  }
  return {};
}

// ---- checks ---------------------------------------------------------------------------------------------------------

/// A check of one row: numbers, words, readings; anything else (arrays, other words of the call) is the slow path's.
PyObject* call_check(PyObject* self, PyObject* const* args, std::size_t nargsf, PyObject* kwnames) {
  auto* d = reinterpret_cast<door*>(self);
  const auto n = static_cast<std::size_t>(PyVectorcall_NARGS(nargsf));
  const std::size_t k = kwnames ? static_cast<std::size_t>(PyTuple_GET_SIZE(kwnames)) : 0;
  PyObject* in[most_arguments + 1] = {};
  if (n > d->count + 1) return call_slow(d, args, nargsf, kwnames);
  for (std::size_t i = 0; i < n; ++i) in[i] = args[i];
  for (std::size_t j = 0; j < k; ++j) {
    const Py_ssize_t p = position(d->parameters, PyTuple_GET_ITEM(kwnames, static_cast<Py_ssize_t>(j)), static_cast<Py_ssize_t>(n + j));
    if (p == -2) return nullptr;
    if (p < 0 || in[p]) return call_slow(d, args, nargsf, kwnames);
    in[p] = args[n + j];
  }
  const check_info& c = d->what->check;
  for (std::size_t i = 0; i <= d->count; ++i) {
    PyObject* const o = in[i];
    if (i == d->book) {
      if (!o && !c.limit_id.empty()) return call_slow(d, args, nargsf, kwnames);
      continue;
    }
    if (!o) {
      if (!d->args[i < d->book ? i : i - 1].optional) return call_slow(d, args, nargsf, kwnames);
    } else if (!PyFloat_Check(o) && !(PyLong_Check(o) && !PyBool_Check(o)) && !PyUnicode_Check(o) && o != Py_None && !PyDict_Check(o) &&
               !py::isinstance<measured>(o) && !py::isinstance<reading>(o)) {
      return call_slow(d, args, nargsf, kwnames);
    }
  }
  return guarded([&]() -> PyObject* {
    std::vector<given> list;
    list.reserve(d->count);
    for (std::size_t i = 0; i <= d->count; ++i) {
      if (i == d->book) continue;
      PyObject* const o = in[i];
      const argument& a = d->args[i < d->book ? i : i - 1];
      if (!o) {
        if (a.table) list.emplace_back(a.table->rows[static_cast<std::size_t>(a.fallback)].key);
        else list.emplace_back(measured::exact(a.fallback));
      } else if (PyFloat_Check(o)) {
        list.emplace_back(PyFloat_AS_DOUBLE(o));
      } else {
        list.push_back(given_from(o));
      }
    }
    verdict v;
    const rulebook rules_ = in[d->book] ? rulebook_from(in[d->book]) : rulebook();
    if (const auto why = detail::try_judge(c, list, rules_, v)) {
      PyErr_SetString(why.kind == detail::refusal::what::relation ? the_errors.relation : the_errors.range, why.text.c_str());
      return nullptr;
    }
    return verdict_to_python(v);
  });
}

// ---- ufunc ----------------------------------------------------------------------------------------------------------

void loop(char** data, const npy_intp* dimensions, const npy_intp* steps, void* extra) {
  const auto* l = static_cast<const loop_data*>(extra);
  const auto& info = l->what->formula;
  const npy_intp refused = batch_rows(info, data, steps, dimensions[0], {threads_in_hand, l->nan_for_errors});
  std::feclearexcept(FE_ALL_EXCEPT);  // a row that was not measured is no floating-point event
  if (refused >= 0) {
    NPY_ALLOW_C_API_DEF
    NPY_ALLOW_C_API;
    if (!PyErr_Occurred()) {
      std::vector<double> x;
      for (std::size_t a = 0; a < info.args.size(); ++a)
        x.push_back(*reinterpret_cast<const double*>(data[a] + refused * steps[a]));
      fault why = info.check(info.self, x.data());
      if (!why) why = {fault::what::no_result, -1};
      std::string text(info.refusal(info.self, why, x.data()));
      text += " (element " + std::to_string(refused) + " of the part of the array in hand; errors=\"nan\" gives NaN instead)";
      PyErr_SetString(why.kind == fault::what::relation ? the_errors.relation : the_errors.range, text.c_str());
    }
    NPY_DISABLE_C_API;
  }
}

bool import_numpy() {
  static bool done = false;
  if (done) return true;
  if (_import_array() < 0 || _import_umath() < 0) return false;
  done = numpy_is_here = true;
  return true;
}

PyUFuncGenericFunction the_loops[] = {loop};
char the_types[most_arguments + 1];

PyObject* ufunc(door* d, bool nan_for_errors) {
  PyObject*& u = d->ufuncs[nan_for_errors];
  if (!u) {
    if (!import_numpy()) return nullptr;
    for (char& t : the_types) t = NPY_DOUBLE;
    d->loops[nan_for_errors] = {d->what, nan_for_errors};
    static void* data_slots[2 * 512];
    static std::size_t used = 0;
    if (used >= 2 * 512) {
      PyErr_SetString(PyExc_RuntimeError, "too many ufuncs");
      return nullptr;
    }
    void** slot = &data_slots[used++];
    *slot = &d->loops[nan_for_errors];
    u = PyUFunc_FromFuncAndData(the_loops, slot, the_types, 1, static_cast<int>(d->what->formula.args.size()), 1, PyUFunc_None,
                                d->what->formula.result.name.data(), d->what->formula.result.summary.data(), 0);
  }
  return u;
}

// ---- attributes and methods -----------------------------------------------------------------------------------------

std::string signature_text(const entry& e, bool for_python) {
  std::string text = for_python ? "(" : std::string(e.name()) + "(";
  if (e.is == entry::what::model) {
    for (const auto& a : e.model.args) text += (text.back() == '(' ? "" : ", ") + std::string(a.name) + (a.optional ? "=None" : "");
    return text + ")";
  }
  bool rulebook_said = e.is != entry::what::check;
  for (const auto& a : e.args()) {
    if (a.optional && !rulebook_said) {
      text += text.back() == '(' ? "rulebook" : ", rulebook";
      if (e.check.limit_id.empty()) text += "=None";
      rulebook_said = true;
    }
    text += (text.back() == '(' ? "" : ", ") + std::string(a.name);
    if (a.optional)
      text += a.table ? "=\"" + std::string(a.table->rows[static_cast<std::size_t>(a.fallback)].key) + "\"" : "=" + number_text(a.fallback);
  }
  if (!rulebook_said) text += std::string(text.back() == '(' ? "rulebook" : ", rulebook") + (e.check.limit_id.empty() ? "=None" : "");
  if (e.is == entry::what::check) text += ", *, rule=None";
  return text + ")";
}

std::string help_text(const entry& e) {
  std::string text = std::string(e.summary()) + "\n\n";
  if (e.is == entry::what::model) {
    for (const auto& a : e.model.args) text += "    " + std::string(a.name) + " (" + std::string(a.type) + "): " + std::string(a.text) + "\n";
  } else {
    for (const auto& a : e.args()) {
      text += "    " + std::string(a.name) + ": " + std::string(a.text);
      if (a.table) text += "; one of " + detail::keys_text(*a.table);
      else
        text += " [" + std::string(a.unit.symbol.empty() ? "1" : a.unit.symbol) + "], " + (a.permitted.low_open ? "above " : "from ") +
                number_text(a.permitted.low) + " to " + number_text(a.permitted.high);
      text += "\n";
    }
    const out& r = e.is == entry::what::formula ? e.formula.result : e.check.result;
    text += std::string("\nReturns ") + (e.is == entry::what::check ? "a Verdict; its value is in " : "") +
            std::string(r.unit.symbol.empty() ? "1 (no unit)" : r.unit.symbol) + ".\n";
  }
  if (e.is == entry::what::formula) {
    if (!e.formula.about.accuracy.empty()) text += "Accuracy: " + std::string(e.formula.about.accuracy) + ".\n";
    if (!e.formula.about.degenerate.empty()) text += "At the edges: " + std::string(e.formula.about.degenerate) + ".\n";
  }
  if (e.is == entry::what::check) text += "Caution: " + std::string(e.check.caution) + "\n";
  if (!e.from().title.empty())
    text += "Source: " + std::string(e.from().title) + (e.from().clause.empty() ? "" : ", " + std::string(e.from().clause)) + " (" + std::string(e.from().grade) + ").\n";
  const proof p = proved(e);
  text += p.seen > 0 ? "Held against " + std::to_string(p.seen) + " published values.\n" : "unproved: no published value holds it yet.\n";
  return text;
}

PyObject* unicode(std::string_view text) { return PyUnicode_FromStringAndSize(text.data(), static_cast<Py_ssize_t>(text.size())); }
door* self_of(PyObject* o) { return reinterpret_cast<door*>(o); }

PyObject* get_name(PyObject* o, void*) { return unicode(self_of(o)->what->name()); }
PyObject* get_module(PyObject* o, void*) { return unicode("makegood." + std::string(self_of(o)->what->subject)); }
PyObject* get_doc(PyObject* o, void*) { return unicode(signature_text(*self_of(o)->what, false) + "\n\n" + help_text(*self_of(o)->what)); }
PyObject* get_text_signature(PyObject* o, void*) { return unicode(signature_text(*self_of(o)->what, true)); }
PyObject* get_kind(PyObject* o, void*) {
  const auto is = self_of(o)->what->is;
  return unicode(is == entry::what::formula ? "formula" : is == entry::what::check ? "check" : "model");
}
PyObject* get_argument_names(PyObject* o, void*) { return Py_NewRef(self_of(o)->names); }
PyObject* get_signature(PyObject* o, void*) {
  PyObject* f = slow_function("signature");
  if (!f) return nullptr;
  PyObject* r = PyObject_CallFunctionObjArgs(f, o, nullptr);
  Py_DECREF(f);
  return r;
}
PyObject* repr(PyObject* o) {
  const auto& e = *self_of(o)->what;
  return unicode("<makegood " + std::string(e.is == entry::what::formula ? "formula " : e.is == entry::what::check ? "check " : "model ") +
                 std::string(e.subject) + "." + signature_text(e, false) + ">");
}

PyObject* method_describe(PyObject* o, PyObject*) {
  return guarded([&] { return to_python(describe(*self_of(o)->what)).release().ptr(); });
}
PyObject* method_get_ufunc(PyObject* o, PyObject* args) {
  int nan_for_errors = 0;
  if (!PyArg_ParseTuple(args, "p", &nan_for_errors)) return nullptr;
  if (self_of(o)->what->is != entry::what::formula) {
    PyErr_SetString(PyExc_TypeError, "only a formula has a ufunc");
    return nullptr;
  }
  return Py_XNewRef(ufunc(self_of(o), nan_for_errors != 0));
}
/// _evaluate(what, list of numbers): worked steps, sensitivities, or the value with uncertainty of a formula.
std::vector<double> plain_numbers(PyObject* list) {
  std::vector<double> x;
  for (auto item : py::reinterpret_borrow<py::sequence>(list)) x.push_back(item.cast<double>());
  return x;
}
void demand(const formula_info& f, const std::vector<double>& x) {
  if (const fault bad = f.check(f.self, x.data())) {
    const message text = f.refusal(f.self, bad, x.data());
    if (bad.kind == fault::what::relation) throw relation_error(text);
    throw range_error(text);
  }
}
PyObject* method_work(PyObject* o, PyObject* list) {
  return guarded([&] {
    const auto& f = self_of(o)->what->formula;
    const auto x = plain_numbers(list);
    demand(f, x);
    return to_python(to_document(f.work(f.self, x.data()))).release().ptr();
  });
}
PyObject* method_equation(PyObject* o, PyObject*) {
  return guarded([&]() -> PyObject* {
    if (self_of(o)->what->is != entry::what::formula) throw error("only a formula has an equation");
    const auto e = self_of(o)->what->formula.equation(self_of(o)->what->formula.self);
    return py::make_tuple(e.text, e.latex).release().ptr();
  });
}
PyObject* method_gradient(PyObject* o, PyObject* list) {
  return guarded([&] {
    const auto& f = self_of(o)->what->formula;
    const auto x = plain_numbers(list);
    demand(f, x);
    std::vector<double> c(x.size());
    const double y = f.gradient(f.self, x.data(), c.data());
    py::list slopes;
    for (double s : c) slopes.append(s);
    return py::make_tuple(y, slopes).release().ptr();
  });
}
/// _bounds(lower ends, upper ends): a pair.
PyObject* method_bounds(PyObject* o, PyObject* args) {
  return guarded([&]() -> PyObject* {
    PyObject *low = nullptr, *high = nullptr;
    if (!PyArg_ParseTuple(args, "OO", &low, &high)) throw py::error_already_set();
    const auto& f = self_of(o)->what->formula;
    const auto from = plain_numbers(low), to = plain_numbers(high);
    if (from.size() != f.args.size() || to.size() != f.args.size()) throw range_error("_bounds: one lower and one upper end for each argument");
    const interval y = f.bounds(f.self, from.data(), to.data());
    return py::make_tuple(y.low, y.high).release().ptr();
  });
}
/// _measured(list of numbers and Measured, order): a Measured; of the second order a tuple with its word.
PyObject* method_measured(PyObject* o, PyObject* args) {
  return guarded([&]() -> PyObject* {
    PyObject* list = nullptr;
    int order = 1;
    if (!PyArg_ParseTuple(args, "Oi", &list, &order)) throw py::error_already_set();
    const auto& f = self_of(o)->what->formula;
    std::vector<measured> in;
    std::vector<double> x;
    for (auto item : py::reinterpret_borrow<py::sequence>(list)) {
      in.push_back(py::isinstance<measured>(item) ? item.cast<measured>() : measured(item.cast<double>()));
      x.push_back(in.back().value);
    }
    demand(f, x);
    std::vector<double> c(x.size());
    const double y = f.gradient(f.self, x.data(), c.data());
    if (!is_finite(y)) throw range_error(f.refusal(f.self, {fault::what::no_result, -1}, x.data()));
    measured first = combine(y, c.data(), in.data(), in.size());
    if (order == 1) return py::cast(std::move(first)).release().ptr();
    const auto second = detail::second_order_of(first, in.data(), in.size(), [&](std::size_t i, std::size_t j) { return f.curvature(f.self, x.data(), i, j); });
    return py::make_tuple(second.result(f.result.name), second.matters(), second.word()).release().ptr();
  });
}
PyObject* method_monte_carlo(PyObject* o, PyObject* args) {
  return guarded([&]() -> PyObject* { return monte_carlo_from(self_of(o)->what->formula, args).release().ptr(); });
}
/// _judge(list of arguments in order, None for a default; rulebook; decision rule)
PyObject* method_judge(PyObject* o, PyObject* args) {
  return guarded([&]() -> PyObject* {
    PyObject *list = nullptr, *book = nullptr, *rule = Py_None;
    if (!PyArg_ParseTuple(args, "OO|O", &list, &book, &rule)) throw py::error_already_set();
    const auto& e = *self_of(o)->what;
    std::vector<given> in;
    for (auto item : py::reinterpret_borrow<py::sequence>(list)) in.push_back(given_from(item));
    return verdict_to_python(detail::judge(e.check, in, rulebook_from(book), decision_rule_from(rule)));
  });
}
/// _judge_rows(list of arguments: one, or a tuple of columns; rulebook; threads; NaN for errors; decision rule)
PyObject* method_judge_rows(PyObject* o, PyObject* args) {
  return guarded([&]() -> PyObject* {
    PyObject *list = nullptr, *book = nullptr, *rule = Py_None;
    unsigned threads = 1;
    int nan_for_errors = 0;
    if (!PyArg_ParseTuple(args, "OOIp|O", &list, &book, &threads, &nan_for_errors, &rule)) throw py::error_already_set();
    return judge_rows_from(*self_of(o)->what, list, book, threads, nan_for_errors != 0, rule).release().ptr();
  });
}
/// _slopes(list of columns; rows; threads; NaN for errors)
PyObject* method_slopes(PyObject* o, PyObject* args) {
  return guarded([&]() -> PyObject* {
    PyObject* list = nullptr;
    Py_ssize_t rows = 0;
    unsigned threads = 1;
    int nan_for_errors = 0;
    if (!PyArg_ParseTuple(args, "OnIp", &list, &rows, &threads, &nan_for_errors)) throw py::error_already_set();
    return slopes_from(*self_of(o)->what, list, static_cast<std::size_t>(rows), threads, nan_for_errors != 0).release().ptr();
  });
}
/// _threads(n): how many the array calls of this thread may use from now on; returns how many it was.
PyObject* method_threads(PyObject*, PyObject* args) {
  unsigned threads = 1;
  if (!PyArg_ParseTuple(args, "I", &threads)) return nullptr;
  const unsigned before = threads_in_hand;
  threads_in_hand = threads;
  return PyLong_FromUnsignedLong(before);
}
/// _run(dict of arguments, rulebook): a dict, a number or a Verdict.
PyObject* method_run(PyObject* o, PyObject* args) {
  return guarded([&]() -> PyObject* {
    PyObject *arguments = nullptr, *book = nullptr;
    if (!PyArg_ParseTuple(args, "OO", &arguments, &book)) throw py::error_already_set();
    const auto d = from_python(arguments);
    const auto& fields = *d.as<document::object>();
    const auto& m = self_of(o)->what->model;
    const rulebook rules_ = rulebook_from(book);
    if (m.judge) return verdict_to_python(m.judge(fields, rules_));
    return to_python(m.run(fields, rules_)).release().ptr();
  });
}
PyObject* method_key(PyObject* o, PyObject* args) {
  int i = 0;
  PyObject* word = nullptr;
  if (!PyArg_ParseTuple(args, "iO", &i, &word)) return nullptr;
  double row = 0.0;
  const taken t = take_other(self_of(o), static_cast<std::size_t>(i), word, &row);
  if (t == taken::other) refuse_type(self_of(o), static_cast<std::size_t>(i), word);
  return t == taken::number ? PyLong_FromDouble(row) : nullptr;
}
template <const char* Name>
PyObject* method_slow(PyObject* o, PyObject* args, PyObject* kwargs) {
  PyObject* f = slow_function(Name);
  if (!f) return nullptr;
  PyObject* named = kwargs ? Py_NewRef(kwargs) : PyDict_New();
  PyObject* r = named ? PyObject_CallFunctionObjArgs(f, o, args, named, nullptr) : nullptr;
  Py_XDECREF(named);
  Py_DECREF(f);
  return r;
}
constexpr char name_worked[] = "worked";
constexpr char name_sensitivities[] = "sensitivities";
constexpr char name_bounds[] = "bounds";
constexpr char name_equation[] = "equation";
constexpr char name_monte_carlo[] = "monte_carlo";
constexpr char name_propagate[] = "propagate";
template <PyObject* (*F)(PyObject*, PyObject*, PyObject*)>
PyCFunction with_keywords() {
  return reinterpret_cast<PyCFunction>(reinterpret_cast<void (*)()>(F));
}

PyMethodDef methods[] = {
    {"worked", with_keywords<method_slow<name_worked>>(), METH_VARARGS | METH_KEYWORDS,
     "worked(...)\n\nThe worked steps for these arguments: symbols, numbers put in, units, result."},
    {"equation", with_keywords<method_slow<name_equation>>(), METH_VARARGS | METH_KEYWORDS,
     "equation(latex=False)\n\nThe equation as the kernel computes it, without numbers: all branches, named parts, inner formulas, units."},
    {"sensitivities", with_keywords<method_slow<name_sensitivities>>(), METH_VARARGS | METH_KEYWORDS,
     "sensitivities(...)\n\nThe exact partial derivatives of the result by each argument, as a dict."},
    {"bounds", with_keywords<method_slow<name_bounds>>(), METH_VARARGS | METH_KEYWORDS,
     "bounds(...)\n\nThe lowest and the highest result, as a tuple, while each argument that is given as (low, high) lies anywhere between."},
    {"monte_carlo", with_keywords<method_slow<name_monte_carlo>>(), METH_VARARGS | METH_KEYWORDS,
     "monte_carlo(..., trials=None, digits=2, probability=0.95, seed=1, threads=1)\n\nThe distribution of the result while the arguments are drawn: "
     "numbers, Measured (what they share is drawn once) or a makegood.distribution."},
    {"propagate", with_keywords<method_slow<name_propagate>>(), METH_VARARGS | METH_KEYWORDS,
     "propagate(..., trials=None, digits=2, probability=0.95, seed=1, threads=1)\n\nThe result with its uncertainty by the first order, held against "
     "Monte Carlo; where the two differ, that of Monte Carlo. `word` says which."},
    {"describe", method_describe, METH_NOARGS, "describe()\n\nEverything the descriptor says, as a dict."},
    {"_ufunc", method_get_ufunc, METH_VARARGS, nullptr},
    {"_work", method_work, METH_O, nullptr},
    {"_equation", method_equation, METH_NOARGS, nullptr},
    {"_gradient", method_gradient, METH_O, nullptr},
    {"_measured", method_measured, METH_VARARGS, nullptr},
    {"_monte_carlo", method_monte_carlo, METH_VARARGS, nullptr},
    {"_bounds", method_bounds, METH_VARARGS, nullptr},
    {"_judge", method_judge, METH_VARARGS, nullptr},
    {"_judge_rows", method_judge_rows, METH_VARARGS, nullptr},
    {"_slopes", method_slopes, METH_VARARGS, nullptr},
    {"_threads", method_threads, METH_VARARGS, nullptr},
    {"_run", method_run, METH_VARARGS, nullptr},
    {"_key", method_key, METH_VARARGS, nullptr},
    {nullptr, nullptr, 0, nullptr}};

PyGetSetDef attributes[] = {
    {"__name__", get_name, nullptr, nullptr, nullptr},
    {"__qualname__", get_name, nullptr, nullptr, nullptr},
    {"__module__", get_module, nullptr, nullptr, nullptr},
    {"__doc__", get_doc, nullptr, nullptr, nullptr},
    {"__text_signature__", get_text_signature, nullptr, nullptr, nullptr},
    {"__signature__", get_signature, nullptr, nullptr, nullptr},
    {"kind", get_kind, nullptr, "formula, check or model", nullptr},
    {"argument_names", get_argument_names, nullptr, "names of the arguments, in order", nullptr},
    {nullptr, nullptr, nullptr, nullptr, nullptr}};

PyMemberDef members[] = {{"__vectorcalloffset__", T_PYSSIZET, offsetof(door, vectorcall), READONLY, nullptr},
                         {nullptr, 0, 0, 0, nullptr}};

void dealloc(PyObject* o) {
  auto* d = self_of(o);
  PyTypeObject* type = Py_TYPE(o);
  Py_XDECREF(d->names);
  Py_XDECREF(d->parameters);
  Py_XDECREF(d->ufuncs[0]);
  Py_XDECREF(d->ufuncs[1]);
  type->tp_free(o);
  Py_DECREF(type);
}
/// Pickled and copied by name.
PyObject* reduce(PyObject* o, PyObject*) {
  return Py_BuildValue("s", std::string(self_of(o)->what->name()).c_str());
}
PyMethodDef* all_methods() {
  static std::vector<PyMethodDef> list = [] {
    std::vector<PyMethodDef> l;
    l.push_back({"__reduce__", reduce, METH_NOARGS, nullptr});
    for (auto* m = methods;; ++m) {
      l.push_back(*m);
      if (!m->ml_name) break;
    }
    return l;
  }();
  return list.data();
}

}  // namespace

const errors& error_types() { return the_errors; }

void add_errors(py::module_& m) {
  const auto make = [&](const char* name, PyObject* base, PyObject* twin, const char* doc) {
    PyObject* bases = twin ? PyTuple_Pack(2, base, twin) : PyTuple_Pack(1, base);
    PyObject* e = PyErr_NewExceptionWithDoc((std::string("makegood.") + name).c_str(), doc, bases, nullptr);
    Py_DECREF(bases);
    if (!e) throw py::error_already_set();
    m.add_object(name, py::reinterpret_borrow<py::object>(e));
    return e;
  };
  the_errors.base = make("Error", PyExc_Exception, nullptr, "Base of every error of the library.");
  the_errors.range = make("RangeError", the_errors.base, PyExc_ValueError, "An argument is outside its permitted range, or not one of the listed words.");
  the_errors.relation = make("RelationError", the_errors.base, PyExc_ValueError, "Two arguments contradict each other.");
  the_errors.document = make("DocumentError", the_errors.base, PyExc_ValueError, "A document has problems; `problems` lists (path, text) of all of them.");
  the_errors.rule = make("RuleError", the_errors.base, PyExc_LookupError, "A rulebook is unknown.");
  the_errors.convergence = make("ConvergenceError", the_errors.base, PyExc_ArithmeticError, "A solver did not reach the accuracy asked for.");
  py::register_exception_translator([](std::exception_ptr p) {
    try {
      if (p) std::rethrow_exception(p);
    } catch (const document_error& e) {
      py::object error = py::reinterpret_borrow<py::object>(the_errors.document)(e.what());
      py::list problems;
      for (const auto& one : e.problems) problems.append(py::make_tuple(one.path, one.text));
      error.attr("problems") = problems;
      PyErr_SetObject(the_errors.document, error.ptr());
    } catch (const range_error& e) {
      PyErr_SetString(the_errors.range, e.what());
    } catch (const relation_error& e) {
      PyErr_SetString(the_errors.relation, e.what());
    } catch (const rule_error& e) {
      PyErr_SetString(the_errors.rule, e.what());
    } catch (const convergence_error& e) {
      PyErr_SetString(the_errors.convergence, e.what());
    } catch (const error& e) {
      PyErr_SetString(the_errors.base, e.what());
    }
  });
}

void add_doors(py::module_& m) {
  PyType_Slot slots[] = {{Py_tp_call, reinterpret_cast<void*>(PyVectorcall_Call)},
                         {Py_tp_repr, reinterpret_cast<void*>(repr)},
                         {Py_tp_dealloc, reinterpret_cast<void*>(dealloc)},
                         {Py_tp_methods, all_methods()},
                         {Py_tp_getset, attributes},
                         {Py_tp_members, members},
                         {0, nullptr}};
  PyType_Spec spec = {"makegood._core.Formula", sizeof(door), 0,
                      Py_TPFLAGS_DEFAULT | Py_TPFLAGS_HAVE_VECTORCALL | Py_TPFLAGS_DISALLOW_INSTANTIATION, slots};
  PyObject* type = PyType_FromSpec(&spec);
  if (!type) throw py::error_already_set();
  m.add_object("Formula", py::reinterpret_steal<py::object>(type));
  py::dict subjects;
  for (const auto& e : catalogue()) {
    auto* d = reinterpret_cast<door*>(PyType_GenericAlloc(reinterpret_cast<PyTypeObject*>(type), 0));
    if (!d) throw py::error_already_set();
    d->vectorcall = e.is == entry::what::check ? call_check : call;
    d->what = &e;
    d->ufuncs[0] = d->ufuncs[1] = nullptr;
    d->args = e.args().data();
    d->count = e.args().size();
    d->has_words = std::any_of(e.args().begin(), e.args().end(), [](const argument& a) { return a.table != nullptr; });
    d->checked = e.formula.checked;  // none for a check or a model
    const std::size_t n = e.is == entry::what::model ? e.model.args.size() : e.args().size();
    d->names = PyTuple_New(static_cast<Py_ssize_t>(n));
    for (std::size_t i = 0; i < n; ++i) {
      const std::string name(e.is == entry::what::model ? e.model.args[i].name : e.args()[i].name);
      PyTuple_SET_ITEM(d->names, static_cast<Py_ssize_t>(i), PyUnicode_InternFromString(name.c_str()));
    }
    d->parameters = Py_NewRef(d->names);
    d->book = n;
    if (e.is == entry::what::check) {
      d->book = e.required();
      PyObject* all = PyTuple_New(static_cast<Py_ssize_t>(n + 1));
      if (!all) throw py::error_already_set();
      for (std::size_t i = 0; i <= n; ++i)
        PyTuple_SET_ITEM(all, static_cast<Py_ssize_t>(i), i == d->book ? PyUnicode_InternFromString("rulebook") : Py_NewRef(PyTuple_GET_ITEM(d->names, static_cast<Py_ssize_t>(i < d->book ? i : i - 1))));
      Py_SETREF(d->parameters, all);
    }
    const py::str subject{std::string(e.subject)};
    if (!subjects.contains(subject)) subjects[subject] = py::dict();
    const py::dict of_subject = subjects[subject];
    of_subject[py::str(std::string(e.name()))] = py::reinterpret_steal<py::object>(reinterpret_cast<PyObject*>(d));
  }
  m.attr("subjects") = subjects;
}

}  // namespace makegood::python
