#!/usr/bin/env python3
"""How far off splits are when edges are dated by RFC 5905's clock filter alone.

A second opinion on the bench's baseline, written from the RFC's text and sharing nothing with the
Java: section 8 gives a sample's offset and round-trip delay, section 10 a register of the newest
eight samples per association, of which the one with the least delay is believed.

An edge is dated when it arrives, by what had come back until then. A split runs from an edge of one
station to a later one of another, 20 to 300 seconds apart by the truth; all such pairs count.

usage: minimum_delay.py FOLDER [RUN ...]     prints a line a run: run,splits,median_us,p99_us
Python's standard library only.
"""

import csv
import sys
from collections import deque
from pathlib import Path

REGISTER = 8
APART_US = (20_000_000, 300_000_000)


def rows(path):
    """The file's records, all figures as whole numbers, grouped by station."""
    stations = {}
    with open(path, newline="", encoding="utf-8") as file:
        for record in csv.DictReader(line for line in file if not line.startswith("#")):
            name = record.pop("station")
            figures = {column: int(text) for column, text in record.items()}
            stations.setdefault(name, []).append(figures)
    return stations


def sample(t1, t2, t3, t4):
    """Delay and offset of the server's clock against the client's; RFC 5905, section 8.

    The gateway asks, so it is the client and the station the server."""
    delay = (t4 - t1) - (t3 - t2)
    offset = ((t2 - t1) + (t3 - t4)) / 2
    return delay, offset


def dated(exchanges, edges):
    """Each edge as (true instant, estimated instant), gateway microseconds."""
    pending = deque(sorted(exchanges, key=lambda x: x["gateway_received_us"]))
    register = deque(maxlen=REGISTER)
    results = []
    for edge in sorted(edges, key=lambda e: e["gateway_arrival_us"]):
        while pending and pending[0]["gateway_received_us"] < edge["gateway_arrival_us"]:
            x = pending.popleft()
            register.append(
                sample(
                    x["gateway_sent_us"],
                    x["station_received_us"],
                    x["station_sent_us"],
                    x["gateway_received_us"],
                )
            )
        if register:
            _, offset = min(register, key=lambda s: s[0])
            results.append((edge["true_gateway_us"], edge["station_us"] - offset))
        else:
            results.append((edge["true_gateway_us"], edge["gateway_arrival_us"]))
    return results


def split_errors(stations):
    """The sorted errors of all pairs that are splits."""
    errors = []
    for start_station, starts in stations.items():
        for finish_station, finishes in stations.items():
            if start_station == finish_station:
                continue
            for true_start, start in starts:
                for true_finish, finish in finishes:
                    truth = true_finish - true_start
                    if APART_US[0] <= truth <= APART_US[1]:
                        errors.append(abs(finish - start - truth))
    return sorted(errors)


def main(arguments):
    if not arguments:
        print(__doc__, file=sys.stderr)
        return 2
    folder = Path(arguments[0])
    ending = "-exchanges.csv"
    names = arguments[1:] or sorted(p.name[: -len(ending)] for p in folder.glob("*" + ending))
    print("run,splits,median_us,p99_us")
    for name in names:
        exchanges = rows(folder / (name + ending))
        edges = rows(folder / (name + "-events.csv"))
        errors = split_errors({s: dated(exchanges.get(s, []), edges[s]) for s in edges})
        print(
            f"{name},{len(errors)},{errors[len(errors) // 2]:.0f},"
            f"{errors[len(errors) * 99 // 100]:.0f}"
        )
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
