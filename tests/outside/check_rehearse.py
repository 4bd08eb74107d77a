"""A rehearsal shows each save at once, keeps the reader's place and the last good page, and answers nobody else."""

import contextlib
import http.client
import json
import os
import pathlib
import re
import select
import shutil
import signal
import socket
import statistics
import subprocess
import time

from check_determinism import prints
from program import BINARY, DEMO, NODE_MODULES, fresh_folder, published, run, tool

AGAINST = "Chromium (npm playwright-core), axe-core, Python's http.client and sockets, and what publish and inspect give"

SESSION = "games/gull-catch.yaml"
PORT = 18620


class Rehearsal:
    """The running program, and what it has said."""

    def __init__(self, pack, port=PORT):
        command = [str(BINARY), "rehearse", str(pack), "--port", str(port)]
        self.process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        self.said = self.process.stdout.readline()
        found = re.search(r"http://127\.0\.0\.1:(\d+)/", self.said)
        if not found:
            self.process.kill()
            raise RuntimeError(f"no address: {self.said} {self.process.stderr.read()}")
        self.address, self.port = found[0], int(found[1])

    def stop(self, sign=signal.SIGINT):
        """Status and seconds to the end."""
        began = time.perf_counter()
        self.process.send_signal(sign)
        try:
            status = self.process.wait(timeout=10)
        except subprocess.TimeoutExpired:
            self.process.kill()
            status = None
        return status, time.perf_counter() - began


@contextlib.contextmanager
def rehearsing(pack, port=PORT):
    rehearsal = Rehearsal(pack, port)
    try:
        yield rehearsal
    finally:
        if rehearsal.process.poll() is None:
            rehearsal.process.kill()
            rehearsal.process.wait()


def ask(port, path, method="GET", host=None, name="127.0.0.1", **headers):
    """Status and body of one request, the path sent as it is."""
    connection = http.client.HTTPConnection(name, port, timeout=30)
    connection.putrequest(method, path, skip_host=True)
    connection.putheader("Host", host or f"127.0.0.1:{port}")
    for header, value in headers.items():
        connection.putheader(header.replace("_", "-"), value)
    connection.endheaders()
    answer = connection.getresponse()
    body = answer.read()
    connection.close()
    return answer.status, body, dict(answer.getheaders())


def check_doors(tally, rehearsal):
    port = rehearsal.port
    for host, status in [("evil.example", 403), (f"evil.example:{port}", 403), (f"127.0.0.1.evil.example:{port}", 403),
                         ("127.0.0.1", 403), (f"127.0.0.1:{port + 1}", 403), (f"localhost:{port}", 200), (f"[::1]:{port}", 200)]:
        tally.same(f"Host {host}: status", ask(port, "/", host=host)[0], status)
    for method in ["POST", "PUT", "DELETE", "OPTIONS", "PATCH", "BREW"]:
        tally.same(f"{method}: status", ask(port, "/", method)[0], 405)
    status, body, _ = ask(port, "/", "HEAD")
    tally.same("HEAD: status and body", (status, body), (200, b""))
    for path in ["/../pack.yaml", "/%2e%2e/pack.yaml", "/sessions/../../pack.yaml", "/pack.yaml", "/games/gull-catch.yaml",
                 "//etc/passwd", "/%00", "/..%5cpack.yaml", "/static/%2e%2e/%2e%2e/pack.yaml"]:
        status, body, _ = ask(port, path)
        tally.holds(f"{path}: nothing is given", status in (400, 404) and b"title:" not in body and b"root:" not in body, f"{status}")
    tally.same("a script of a page from elsewhere: status", ask(port, "/index.html", Sec_Fetch_Site="cross-site", Sec_Fetch_Mode="no-cors")[0], 403)
    tally.same("a link from elsewhere: status", ask(port, "/index.html", Sec_Fetch_Site="cross-site", Sec_Fetch_Mode="navigate")[0], 200)
    tally.same("no worker keeps pages: status", ask(port, "/sw.js")[0], 404)
    tally.same("a worker that would keep pages: status", ask(port, "/static/ground.css", Service_Worker="script")[0], 403)
    headers = ask(port, "/")[2]
    tally.same("nothing is kept by the browser", headers.get("cache-control"), "no-store")
    check_loopback(tally, port)


def check_loopback(tally, port):
    """Only the loopback addresses listen (RFC 1122, 3.2.1.3; RFC 4291, 2.5.3)."""
    listening = set()
    for table, width in [("/proc/net/tcp", 8), ("/proc/net/tcp6", 32)]:
        for line in pathlib.Path(table).read_text().splitlines()[1:]:
            local, state = line.split()[1], line.split()[3]
            if state == "0A" and int(local[width + 1:], 16) == port:
                listening.add(local[:width])
    own = {"0100007F", "00000000000000000000000001000000"}
    tally.holds("only loopback addresses listen", listening and listening <= own, str(listening))
    if "00000000000000000000000001000000" in listening:
        tally.same("the second kind of address answers", ask(port, "/", host=f"[::1]:{port}", name="::1")[0], 200)


def check_same_files(tally, rehearsal, pack):
    """What is shown is what would be published, but for the panel and what it loads."""
    there = published(pack)
    added = re.compile(rb'<link rel="stylesheet" href="/-rehearse/panel\.css"><script src="/-rehearse/refresh\.js"[^>]*></script>'
                       rb'|<aside id="rehearsal".*</aside>', re.S)
    files = sorted(path for path in there.rglob("*") if path.is_file() and path.name not in (".homeground", "sw.js"))
    for path in files:
        name = path.relative_to(there).as_posix()
        if path.suffix == ".pdf" and SESSION.split("/")[1][:-5] not in name:
            continue
        status, body, _ = ask(rehearsal.port, f"/{name}")
        if path.suffix == ".html":
            tally.holds(f"{name}: the panel is over it", b'<aside id="rehearsal"' in body)
            body = added.sub(b"", body)
            tally.holds(f"{name}: published without the panel", b"rehears" not in path.read_bytes())
        tally.holds(f"{name}: as published", status == 200 and body == path.read_bytes(), f"{status}, {len(body)} bytes")


def check_work(tally, rehearsal, pack):
    script = pathlib.Path(__file__).with_name("rehearse.mjs")
    met = json.loads(tool("node", script, NODE_MODULES, rehearsal.address, pack, SESSION, timeout=300))
    times = met["times"]
    tally.note(f"from save to the page in Chromium: median {statistics.median(times):.0f} ms, most {max(times):.0f} ms of {len(times)}")
    tally.holds("a save is shown within two seconds, however busy the computer", max(times) < 2000, str(times))
    tally.holds("the page had gone down", met["placeBefore"][0] > 300, str(met["placeBefore"]))
    tally.same("the place is kept: how far down, what is open", met["placeAfter"], met["placeBefore"])
    tally.same("the focus stays with the page", met["focus"], "BODY")
    tally.holds("the new page is put in place, not loaded", met["inPlace"])
    tally.same("its add-ons begin anew: buttons that show", met["buttonsAfter"], met["buttonsBefore"])
    tally.holds("there are such buttons", met["buttonsBefore"] > 0, str(met["buttonsBefore"]))
    tally.holds("a neighbour’s file is watched", met.get("lent", False))
    tally.holds("a neighbour’s picture is watched, and shown anew", met["pictureAfter"] != met["pictureBefore"], f"{met['pictureBefore']} and {met['pictureAfter']} dots wide")
    tally.same("saved by renaming", met["renamed"], "Saved by renaming")
    broken = met["broken"]
    tally.same("broken: the last good page stays", broken["heading"], "Saved by renaming")
    tally.holds("broken: file and line are told", re.search(rf"{SESSION}, line \d+", broken["text"]), broken["text"][:300])
    tally.holds("broken: the line is shown as text", "<script>window.bad=1</script>" in broken["text"], broken["text"][:300])
    tally.same("broken: nothing of it runs", broken["bad"], None)
    tally.same("broken: the focus is not taken", broken["focus"], "BODY")
    tally.holds(f"the panel: no violation in {met['rules']} rules that applied", met["rules"] > 5 and not met["violations"], "; ".join(met["violations"]))
    tally.holds("the panel stays folded", met["folded"])
    tally.same("cut short: the last good page stays", met["cut"], {"heading": "Saved by renaming", "state": "problems"})
    tally.holds("mended: nothing of it is left", "problem" not in met["mended"], met["mended"])
    tally.holds("a new file is in the list", met.get("added", False))
    tally.same("a new file has its page", met["addedHeading"], "Brand new one")
    tally.same("a deleted file has none", (met["removed"], met["removedStatus"]), ("There is no such page", 404))
    tally.holds("a shared file is shown", met.get("shared", False))
    tally.holds("a shared file that is broken: the last good one stays", "Saltmarsh Trial School" in met["sharedBroken"][0] and "pack.yaml" in met["sharedBroken"][1],
                str(met["sharedBroken"])[:300])
    tally.same("the pages for teachers are shown too: status", met["teachers"][0], 200)
    away = [url for url in met["requests"] if not url.startswith(rehearsal.address)]
    tally.same(f"all {len(met['requests'])} requests go to this computer", away, [])
    # The worker that would keep the pages for later is refused, and the page of a deleted file is gone.
    expected = re.compile(r"404|\(403\) was received when fetching the script")
    faults = [said for said in met["console"] if not expected.search(said)]
    tally.same("no errors in the console", faults, [])


def check_words(tally, rehearsal, pack):
    """The panel says what inspect says."""
    path = pack / SESSION
    whole = path.read_text(encoding="utf-8")
    path.write_text(whole.replace("title:", "titel:", 1), encoding="utf-8")
    found = json.loads(run("inspect", pack, "--report", "json").stdout)
    wanted = [finding for finding in found if finding["severity"] == "problem"]
    deadline = time.monotonic() + 10
    body = b""
    while b'class="problems"' not in body and time.monotonic() < deadline:
        time.sleep(0.05)
        body = ask(rehearsal.port, f"/sessions/{SESSION[:-5]}.html")[1]
    panel = body.decode().rpartition('<aside id="rehearsal"')[2]
    tally.holds("inspect finds problems", wanted)
    for finding in wanted:
        said = finding["message"].replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace('"', "&quot;")
        tally.holds(f"{finding['code']}: said as inspect does", said in panel, said)
        tally.holds(f"{finding['code']}: at its line", f"{finding['file']}, line {finding['line']}" in panel)
    path.write_text(whole, encoding="utf-8")


def check_end(tally, rehearsal, pack):
    with rehearsing(pack, rehearsal.port) as second:
        tally.holds("a taken port: another is taken", second.port > rehearsal.port, str(second.port))
        tally.same("a taken port: it answers", ask(second.port, "/")[0], 200)
        tally.same("ended from outside (SIGINT): status", second.stop()[0], 0)
        tally.holds("a taken port: said", str(rehearsal.port) in second.process.stderr.read())
    # A browser that waits for news does not hold the end up.
    waiting = socket.create_connection(("127.0.0.1", rehearsal.port))
    mark = re.search(rb'data-mark="([0-9a-f]+)"', ask(rehearsal.port, "/index.html")[1])[1].decode()
    request = f"GET /-rehearse/wait.js?page=%2Findex.html&mark={mark} HTTP/1.1\r\nHost: 127.0.0.1:{rehearsal.port}\r\n\r\n"
    waiting.sendall(request.encode())
    tally.holds("a page that waits is not answered while nothing changes", not select.select([waiting], [], [], 1.0)[0])
    status, seconds = rehearsal.stop()
    tally.same("Ctrl-C: status", status, 0)
    tally.holds("Ctrl-C: at once", seconds < 2, f"{seconds:.1f} s")
    waiting.close()


def check(tally):
    room = fresh_folder("rehearse")
    pack = room / "pack"
    shutil.copytree(DEMO, pack)
    before = prints(pack)
    with rehearsing(pack) as rehearsal:
        check_doors(tally, rehearsal)
        check_same_files(tally, rehearsal, DEMO)
        check_work(tally, rehearsal, pack)
        check_words(tally, rehearsal, pack)
        check_end(tally, rehearsal, pack)
    tally.same("nothing is written to the pack", prints(pack), before)
    tally.same("nothing is written beside it", sorted(os.listdir(room)), ["pack"])
    tally.same("a folder that is not there: status", run("rehearse", room / "none").returncode, 2)
