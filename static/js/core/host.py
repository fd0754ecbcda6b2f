"""Answer the page's calls into the core, as text in and text out.

This file runs on the phone, beside the core shipped as package `core`, and in
the tests. It alone turns JSON into values there: the core never sees text.
"""

import gc
import json

# The phone's interpreter collects its garbage between calls, by default after
# each 16 KB: a collection of 3 to 6 ms on every fifth tap. A MB on, it is one on
# hundreds, and the core itself is read in 40 ms less.
GARBAGE_BYTES = 1048576
if hasattr(gc, "threshold"):
    gc.threshold(GARBAGE_BYTES)

# The one desk of this phone, under the key "desk" once it is asked for. A tap
# gives it one entry; nothing is folded twice.
_kept = {}


def find(module, name):
    """Return a public function of the core.

    Args:
        module: dotted name below `core`, such as "formulas.heat".
        name: the function's name.

    Raises:
        ImportError: no such module, or one that the phone has not got yet.
        ValueError: no such function, or a private name.
    """
    for part in module.split(".") + [name]:
        if not part or part.startswith("_"):
            raise ValueError("not a public name: %s.%s" % (module, name))
    path = "core." + module
    try:
        found = __import__(path)
    except ImportError as problem:
        raise ImportError("the core has no %s: %s" % (module, problem))
    try:
        for part in path.split(".")[1:] + [name]:
            found = getattr(found, part)
    except AttributeError as problem:
        raise ValueError("the core has no %s.%s: %s" % (module, name, problem))
    return found


def take_rules(rules_text):
    """Keep the legal figures for the desk, which the core cannot read itself.

    Args:
        rules_text: {rule id: the rule} as JSON; they come beside those of before.
    """
    rules = dict(_kept.get("rules", {}))
    rules.update(json.loads(rules_text))
    _kept["rules"] = rules
    if "desk" in _kept:
        find("desk", "set_rules")(_kept["desk"], _kept["rules"])


def kept_desk():
    """Return the desk kept between calls, new at the first one."""
    if "desk" not in _kept:
        _kept["desk"] = find("desk", "new")()
        find("desk", "set_rules")(_kept["desk"], _kept.get("rules", {}))
    return _kept["desk"]


def call(request_text):
    """Call one function of the core and return its answer as JSON.

    Args:
        request_text: {"module", "name", "args", "kwargs", "desk"}; the last
            three may be left out. With "desk" true the function gets the kept
            desk before its other arguments.

    Returns:
        {"ok": value}, or {"error": {"type", "text"}} when the call failed.
    """
    try:
        request = json.loads(request_text)
        function = find(request["module"], request["name"])
        args = request.get("args", [])
        if request.get("desk"):
            args = [kept_desk()] + args
        value = function(*args, **request.get("kwargs", {}))
        return json.dumps({"ok": value})
    except Exception as problem:
        # The page must always get an answer: a call that raised through the
        # bridge would leave the screen waiting.
        error = json.dumps(str(problem))
        name = json.dumps(type(problem).__name__)
        # Dicts have no order here, and the worker looks at how an answer begins.
        return '{"error": {"type": %s, "text": %s}}' % (name, error)
