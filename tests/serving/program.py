"""A small server for tests of sockets: one process, few threads.

Use: python -m tests.serving.program PORT WORKER LIMITS [CERTIFICATE KEY]
"""

import json
import sys
import time
from pathlib import Path
from urllib.parse import unquote

from gunicorn.app.base import BaseApplication

from server.serving.hook import HAND_OVER
from server.serving.limits import Limits
from server.serving.worker import Worker

THREADS = 2
BIG = b"x" * (16 << 20)  # more than any socket's buffers take
handed = []


def app(environ, start_response):
    """Answer by the path."""
    path = environ["PATH_INFO"]
    if path == "/fails":
        raise RuntimeError("as asked")
    if path == "/unread":
        body = b"unread"
    elif path == "/gives-way":
        body = str(sys.getswitchinterval()).encode()
    elif path == "/big":
        body = BIG
    elif path == "/live":
        return live(environ, start_response)
    elif path == "/waits":
        file = Path(unquote(environ["QUERY_STRING"]))
        file.with_suffix(".asked").touch()
        while not file.exists():
            time.sleep(0.01)
        body = b"waited"
    else:
        body = environ["wsgi.input"].read() or environ["wsgi.url_scheme"].encode()
    start_response("200 OK", [("Content-Length", str(len(body)))])
    return [body]


def live(environ, start_response):
    """Give the socket away, and say something on all that were given."""
    start_response("200 OK", [("Content-Type", "text/plain")])

    def take(channel):
        handed.append(channel)
        if len(handed) == 2:
            for one in handed:
                one.put_part(b"for all;")
                one.flush()
                one.put_part(b"")
                one.flush()
                one.end()
                one.close()

    environ[HAND_OVER](take)
    return iter([b"begun;"])


def tell_ready(_arbiter):
    """Say that connections are taken."""
    sys.stdout.write("ready\n")
    sys.stdout.flush()


class Program(BaseApplication):
    """Gunicorn, set up from the command line of this file."""

    def load_config(self):
        port, worker, limits, *tls = sys.argv[1:]

        class Tried(Worker):
            pass

        Tried.limits = Limits(**json.loads(limits))
        self.cfg.set("bind", f"127.0.0.1:{port}")
        self.cfg.set("workers", 1)
        self.cfg.set("threads", THREADS)
        self.cfg.set("worker_class", worker if worker != "ours" else Tried)
        self.cfg.set("graceful_timeout", 5)
        self.cfg.set("control_socket_disable", True)
        self.cfg.set("loglevel", "warning")
        self.cfg.set("when_ready", tell_ready)
        if tls:
            self.cfg.set("certfile", tls[0])
            self.cfg.set("keyfile", tls[1])

    def load(self):
        return app


if __name__ == "__main__":
    Program().run()
