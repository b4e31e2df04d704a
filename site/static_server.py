#!/usr/bin/env python3
"""Serves a folder as a static host would: with the MIME types that a browser insists on, and compressed where there
is a compressed file beside the plain one."""

import argparse
import errno
import functools
import http.server
import os
import sys
import urllib.parse

TYPES = {
    ".css": "text/css; charset=utf-8",
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".mjs": "text/javascript; charset=utf-8",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".woff2": "font/woff2",
}


CODINGS = {"br": ".br", "gzip": ".gz"}  # the best first, with the suffix of its files


def accepted(header):
    """The codings that a browser names in Accept-Encoding and does not refuse there."""
    parts = [part.replace(" ", "").partition(";q=") for part in header.split(",")]
    return {coding for coding, _, weight in parts if weight.strip("0.") or not weight}


def is_current(packed, plain):
    return os.path.isfile(packed) and os.path.getmtime(packed) >= os.path.getmtime(plain)


class Handler(http.server.SimpleHTTPRequestHandler):
    extensions_map = {**http.server.SimpleHTTPRequestHandler.extensions_map, **TYPES}
    coding = None

    def send_head(self):
        address = urllib.parse.urlsplit(self.path).path
        name = address + "index.html" if address.endswith("/") else address
        plain = self.translate_path(name)
        self.coding = None
        wanted = accepted(self.headers.get("Accept-Encoding", ""))
        for coding, ending in CODINGS.items():
            if coding in wanted and os.path.isfile(plain) and is_current(plain + ending, plain):
                self.coding = coding
                self.path = name + ending
                break
        return super().send_head()

    def guess_type(self, path):
        return super().guess_type(path[:-len(CODINGS[self.coding])] if self.coding else path)

    def end_headers(self):
        self.send_header("Cache-Control", "no-cache")
        self.send_header("Vary", "Accept-Encoding")
        if self.coding:
            self.send_header("Content-Encoding", self.coding)
        super().end_headers()

    def log_message(self, *_):
        pass


def listen(address, port, handler, tries=20):
    for candidate in range(port, port + tries):
        try:
            return http.server.ThreadingHTTPServer((address, candidate), handler)
        except OSError as error:
            if error.errno != errno.EADDRINUSE:
                raise
            print(f"Port {candidate} is in use; trying {candidate + 1}.", flush=True)
    sys.exit(f"No port from {port} to {port + tries - 1} is free. Name another with --port.")


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder")
    parser.add_argument("--port", type=int, default=8080, help="0 takes any free one")
    parser.add_argument("--address", default="127.0.0.1",
                        help="0.0.0.0 lets other machines on the network in")
    options = parser.parse_args()
    handler = functools.partial(Handler, directory=options.folder)
    server = listen(options.address, options.port, handler)
    host = "localhost" if options.address in ("127.0.0.1", "0.0.0.0") else options.address
    print(f"Gusset is at http://{host}:{server.server_port}/  (Ctrl+C ends it)", flush=True)
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        print()


if __name__ == "__main__":
    main()
