# Shared by tests/run and demo/run, which source it from the project's folder.
# It makes .venv from a lock and fetches the browser modules. Stamps make the
# second run instant.
#
# INSTALL_SYSTEM=1 lets it add Debian packages when it runs as root.

say() {
    printf '%s\n' "$*"
}

die() {
    printf '%s\n' "$*" >&2
    exit 1
}

# Install one Debian package, where that was allowed and can work.
system_install() {
    [ "${INSTALL_SYSTEM:-}" = 1 ] || return 1
    [ "$(id -u)" = 0 ] || return 1
    command -v apt-get >/dev/null 2>&1 || return 1
    say "Installing $1."
    apt-get update -qq >/dev/null 2>&1 || true
    DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "$1" >/dev/null 2>&1
}

is_new_enough() {
    "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1
}

# Set `base` to a Python 3.11 or later.
find_python() {
    for base in ${PYTHON:-} python3 python3.14 python3.13 python3.12 python3.11; do
        if command -v "$base" >/dev/null 2>&1 && is_new_enough "$base"; then
            return 0
        fi
    done
    found=$(python3 --version 2>/dev/null || echo "no python3")
    die "Python 3.11 or later is needed; this machine has: $found." \
        "Install it, or name one: PYTHON=/path/to/python3.12 sh $0"
}

make_venv() {
    [ -x .venv/bin/python ] && is_new_enough .venv/bin/python &&
        .venv/bin/python -m pip --version >/dev/null 2>&1 && return 0
    find_python
    say "Making .venv with $("$base" --version)."
    "$base" -m venv --clear .venv >/dev/null 2>&1 && return 0
    version=$("$base" -c 'import sys; print("python3.%d" % sys.version_info[1])')
    if system_install "$version-venv" || system_install python3-venv; then
        "$base" -m venv --clear .venv >/dev/null 2>&1 && return 0
    fi
    rm -rf .venv
    die "Python's venv module does not work here." \
        "On Debian or Ubuntu: apt-get install $version-venv (or python3-venv)."
}

# The stamp is the lock itself, so a change to it is always seen.
is_installed() {
    cmp -s "$1" ".venv/.installed-$2"
}

# install LOCK NAME: bring .venv to what the lock says.
install() {
    is_installed "$1" "$2" && [ -x .venv/bin/python ] && return 0
    make_venv
    say "Installing the $2 packages (once; some minutes on a slow line)."
    .venv/bin/python -m pip install --quiet --disable-pip-version-check \
        --require-hashes -r "$1" ||
        die "The packages could not be installed; pip's reason stands above."
    cp "$1" ".venv/.installed-$2"
}

fetch_modules() {
    .venv/bin/python deploy/fetch_modules.py || exit 1
}
