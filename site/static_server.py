#!/usr/bin/env python3
"""Serves a folder as a static host would, with the MIME types that a browser insists on."""

import argparse
import errno
import functools
import http.server
import sys

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
}


class Handler(http.server.SimpleHTTPRequestHandler):
    extensions_map = {**http.server.SimpleHTTPRequestHandler.extensions_map, **TYPES}

    def end_headers(self):
        self.send_header("Cache-Control", "no-cache")
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
