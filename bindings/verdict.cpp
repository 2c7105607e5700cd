// SPDX-License-Identifier: MIT
// Verdict: an extension type of its own, numbers and handles inside; texts are written when they are asked for.
#include "door.hpp"
#include <new>

namespace py = pybind11;

namespace makegood::python {

namespace {

struct verdict_object {
  PyObject_HEAD
  verdict is;
};
PyTypeObject* the_type = nullptr;

const verdict& of(PyObject* o) { return reinterpret_cast<verdict_object*>(o)->is; }

PyObject* text(std::string_view t) { return PyUnicode_FromStringAndSize(t.data(), static_cast<Py_ssize_t>(t.size())); }
PyObject* number(double x) {
  if (is_nan(x)) Py_RETURN_NONE;
  return PyFloat_FromDouble(x);
}
PyObject* object_of(std::string_view t) { return text(t); }
PyObject* object_of(double x) { return number(x); }
PyObject* object_of(bool x) { return PyBool_FromLong(x); }
PyObject* object_of(const std::optional<better_reading>& b) { return to_python(to_document(b)).release().ptr(); }
PyObject* object_of(const std::vector<std::string>& list) {
  PyObject* l = PyList_New(static_cast<Py_ssize_t>(list.size()));
  for (std::size_t i = 0; l && i < list.size(); ++i) PyList_SET_ITEM(l, static_cast<Py_ssize_t>(i), text(list[i]));
  return l;
}
/// One attribute: what a function of the verdict returns, as Python has it.
template <auto Function>
PyObject* get(PyObject* o, void*) {
  try {
    return object_of(Function(of(o)));
  } catch (const std::exception& e) {
    PyErr_SetString(error_types().base, e.what());
    return nullptr;
  }
}

std::string source_text(const verdict& v) {
  const std::string clause = v.source_clause();
  return v.source_title() + (clause.empty() ? "" : ", " + clause);
}
std::string repr_text(const verdict& v) {
  std::string t = "Verdict(" + std::string(v.check()) + ": " + std::string(outcome_text(v.outcome));
  if (v.reason != reason::none) t += ", " + std::string(reason_text(v.reason));
  const int n = v.digits(5);
  if (!is_nan(v.value)) t += ", " + quantity_text(v.value, v.unit(), n);
  if (!is_nan(v.lower) && !is_nan(v.upper)) t += " within " + number_text(v.lower, n) + " to " + quantity_text(v.upper, v.unit(), n);
  else if (!is_nan(v.limit())) t += " " + std::string(comparator_text(v.compare)) + " " + quantity_text(v.limit(), v.unit(), n);
  return t + ")";
}

#define ATTRIBUTE(name, help, ...) \
  {#name, get<[](const verdict& v) -> __VA_ARGS__; }>, nullptr, help, nullptr}
PyGetSetDef attributes[] = {
    ATTRIBUTE(outcome, "pass, fail or undecided", std::string_view { return outcome_text(v.outcome)),
    ATTRIBUTE(reason, "why it is undecided", std::string_view { return reason_text(v.reason)),
    ATTRIBUTE(plain, "the reading against the limit, nothing else", std::string_view { return is_nan(v.value) ? std::string_view() : outcome_text(v.plain)),
    ATTRIBUTE(detail, "what is missing, or what lies outside validity", std::string { return v.detail()),
    ATTRIBUTE(value, "what was judged", double { return v.value),
    ATTRIBUTE(limit, "the limit; two of them: the nearer", double { return v.limit()),
    ATTRIBUTE(lower, "the lower limit", double { return v.lower),
    ATTRIBUTE(upper, "the upper limit", double { return v.upper),
    ATTRIBUTE(margin, "distance to the nearest limit, safe side positive", double { return v.margin),
    ATTRIBUTE(probability, "probability of conformity", double { return v.probability),
    ATTRIBUTE(comparator, "how the value is held against the limit", std::string_view { return comparator_text(v.compare)),
    ATTRIBUTE(standard_uncertainty, "of the margin", double { return v.standard_uncertainty),
    ATTRIBUTE(expanded_uncertainty, "of the margin, k = 2", double { return v.expanded_uncertainty()),
    ATTRIBUTE(assumed, "the worst case of an instrument's class was taken", bool { return v.assumed),
    ATTRIBUTE(censored, "above, below or no trip when the reading was out of range", std::string_view { return v.censored()),
    ATTRIBUTE(settle, "what reading would settle it", std::string { return v.settle()),
    ATTRIBUTE(better, "the better reading that would settle it: argument, standard uncertainty in its unit, present one, share of the doubt", std::optional<better_reading> { return v.better()),
    ATTRIBUTE(rule, "name of the decision rule", std::string { return v.decided_by.name()),
    ATTRIBUTE(statement, "in the words of a non-binary rule: pass, conditional pass, conditional fail, fail; undecided", std::string_view { return v.statement()),
    ATTRIBUTE(notes, "what is to be known of the readings: leads, counts, how an operating uncertainty was read", std::vector<std::string> { return v.notes()),
    ATTRIBUTE(unit, "unit of the value", std::string_view { return v.unit()),
    ATTRIBUTE(caution, "what to mind", std::string_view { return v.caution()),
    ATTRIBUTE(check, "name of the check", std::string_view { return v.check()),
    ATTRIBUTE(rulebook, "id of the rulebook", std::string { return v.rulebook()),
    ATTRIBUTE(overrides, "named changes of the rulebook that were used", std::vector<std::string> { return v.overrides()),
    ATTRIBUTE(source, "where the limit is published", std::string { return source_text(v)),
    ATTRIBUTE(grade, "how well the source is known", std::string { return v.source_grade()),
    {nullptr, nullptr, nullptr, nullptr, nullptr}};
#undef ATTRIBUTE

PyObject* repr(PyObject* o) { return get<[](const verdict& v) { return repr_text(v); }>(o, nullptr); }
int truth(PyObject*) {
  PyErr_SetString(PyExc_TypeError, "a verdict has three outcomes and no truth value: compare .outcome with \"pass\", \"fail\" or \"undecided\"");
  return -1;
}
template <bool StepsAlone>
PyObject* document_of(PyObject* o, PyObject*) {
  try {
    const document::value d = to_document(of(o));
    return to_python(StepsAlone ? *d.as<document::object>()->find("steps") : d).release().ptr();
  } catch (py::error_already_set& e) {
    e.restore();
  } catch (const std::exception& e) {
    PyErr_SetString(error_types().base, e.what());
  }
  return nullptr;
}
/// which_settle(instruments): the ids of those that would settle it at the same value.
PyObject* which_settle(PyObject* o, PyObject* list) {
  try {
    py::list ids;
    for (auto item : py::reinterpret_borrow<py::sequence>(list)) {
      const auto& i = item.cast<const instrument&>();
      if (of(o).outcome_with(i) != outcome::undecided) ids.append(i.id);
    }
    return ids.release().ptr();
  } catch (py::error_already_set& e) {
    e.restore();
  } catch (const py::cast_error&) {
    PyErr_SetString(PyExc_TypeError, "which_settle takes a list of Instrument");
  } catch (const std::exception& e) {
    PyErr_SetString(error_types().base, e.what());
  }
  return nullptr;
}
PyMethodDef methods[] = {{"worked", document_of<true>, METH_NOARGS, "worked()\n\nThe worked steps of value and limit, a list of dicts."},
                         {"to_dict", document_of<false>, METH_NOARGS, "to_dict()\n\nEverything, as a dict of plain values."},
                         {"which_settle", which_settle, METH_O,
                          "which_settle(instruments)\n\nThe ids of the instruments that would settle it, had they read the argument with the largest share of the doubt."},
                         {nullptr, nullptr, 0, nullptr}};

void dealloc(PyObject* o) {
  PyTypeObject* type = Py_TYPE(o);
  reinterpret_cast<verdict_object*>(o)->is.~verdict();
  type->tp_free(o);
  Py_DECREF(type);
}

}  // namespace

PyObject* verdict_to_python(const verdict& v) {
  PyObject* o = the_type->tp_alloc(the_type, 0);
  if (o) new (&reinterpret_cast<verdict_object*>(o)->is) verdict(v);
  return o;
}

void add_verdict(py::module_& m) {
  PyType_Slot slots[] = {{Py_tp_repr, reinterpret_cast<void*>(repr)},
                         {Py_tp_dealloc, reinterpret_cast<void*>(dealloc)},
                         {Py_tp_methods, methods},
                         {Py_tp_getset, attributes},
                         {Py_nb_bool, reinterpret_cast<void*>(truth)},
                         {Py_tp_doc, const_cast<char*>("The outcome of a check: pass, fail or undecided with a reason; value, limit, margin, doubt, source, working.")},
                         {0, nullptr}};
  PyType_Spec spec = {"makegood._core.Verdict", sizeof(verdict_object), 0, Py_TPFLAGS_DEFAULT | Py_TPFLAGS_DISALLOW_INSTANTIATION, slots};
  PyObject* type = PyType_FromSpec(&spec);
  if (!type) throw py::error_already_set();
  the_type = reinterpret_cast<PyTypeObject*>(type);
  m.add_object("Verdict", py::reinterpret_borrow<py::object>(type));
}

}  // namespace makegood::python
