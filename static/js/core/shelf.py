"""Hand the core's files to the interpreter from one text.

Read through the interpreter's own file system, which is a JavaScript one, each file
costs a dozen looks, half of them failures with a trace, and many small reads: with
over a hundred files that was a third of the core's start. Here a look is one in a
dict, and all texts come over at once.
"""

import io
import sys

import vfs

ROOT = "/shelf"
ABSENT = 2  # ENOENT
# What `stat` answers: the mode of a file and of a folder, and nine figures that
# nobody asks for.
FILE = (0x8000, 0, 0, 0, 0, 0, 0, 0, 0, 0)
FOLDER = (0x4000, 0, 0, 0, 0, 0, 0, 0, 0, 0)


class Shelf:
    """A file system as the interpreter's `vfs` asks for, to be read only."""

    def __init__(self):
        self.files = {}
        self.stats = {"": FOLDER, "/": FOLDER}

    def mount(self, readonly, mkfs):
        """Do nothing: it is ready as it is."""

    def umount(self):
        """Do nothing: it holds nothing open."""

    def stat(self, path):
        """Return what lies at a path.

        Raises:
            OSError: nothing.
        """
        if path in self.stats:
            return self.stats[path]
        raise OSError(ABSENT)

    def open(self, path, mode):
        """Return a file as a stream.

        Args:
            path: below ROOT, with a stroke in front.
            mode: reading alone is to be had.

        Raises:
            OSError: no such file.
        """
        if path not in self.files:
            raise OSError(ABSENT)
        sheaf, start, end = self.files[path]
        return io.BytesIO(sheaf[start:end])

    def put(self, name, place):
        """Put a file on the shelf, and the folders above it.

        Args:
            name: its path below ROOT.
            place: the bytes that hold it among others, from where, and up to where.
        """
        path = "/" + name
        self.files[path] = place
        self.stats[path] = FILE
        folder = path[: path.rfind("/")]
        while folder not in self.stats:
            self.stats[folder] = FOLDER
            folder = folder[: folder.rfind("/")]


_shelf = Shelf()
vfs.mount(_shelf, ROOT)
sys.path.insert(0, ROOT)


def take(path, index_text):
    """Put files on the shelf, from where they are imported like any other.

    Args:
        path: where the interpreter finds them all in one file.
        index_text: a line for each: its name, a space, and how many bytes it has.
    """
    rows = [line.split(" ") for line in index_text.split("\n")]
    with open(path, "rb") as file:  # noqa: PTH123 - the phone has no pathlib
        # Of a size that is not told it would read 256 bytes at a time.
        sheaf = file.read(sum(int(size) for _, size in rows))
    start = 0
    for name, size in rows:
        end = start + int(size)
        _shelf.put(name, (sheaf, start, end))
        start = end
