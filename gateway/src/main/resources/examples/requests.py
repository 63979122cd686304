import binascii
import hashlib
import time
import urequests

URL = "@address@/api/v1"
BOX = "@box@"
KEY = "@key@"
KEPT = "requests-done.txt"


def stop_site():
    return False  # stop the site here; True once it has stopped


def sha256(data):
    return hashlib.sha256(data).digest()


def hmac(key, data):  # a key of 32 bytes, as ours is
    block = key + bytes(64 - len(key))
    inner = sha256(bytes(b ^ 0x36 for b in block) + data)
    return sha256(bytes(b ^ 0x5C for b in block) + inner)


def is_right(request):
    lines = "\n".join(["yardlight-request", BOX, request["id"], request["ask"], request["expires"]])
    right = binascii.b2a_base64(hmac(sha256(KEY.encode()), lines.encode())).decode().strip()
    return request["signature"] == right and request["ask"] == "shut-in"


def seconds(at):  # of the day
    return int(at[11:13]) * 3600 + int(at[14:16]) * 60 + int(at[17:19])


def left(received, expires):  # seconds; nothing lives longer than two hours
    span = (seconds(expires) - seconds(received)) % 86400
    return span if received[:19] < expires[:19] and span <= 7200 else 0


def kept(name):  # what became of a request, or None
    said = None
    try:
        with open(KEPT) as lines:
            for line in lines:
                if line.split()[0] == name:
                    said = line.split()[1]
    except OSError:
        pass
    return said


def keep(name, said):
    with open(KEPT, "a") as lines:
        lines.write(name + " " + said + "\n")


def post(path, body):
    answer = urequests.post(URL + path, json=body, headers={"Authorization": "Bearer " + KEY})
    try:
        return answer.status_code, answer.json()
    finally:
        answer.close()


def look(heard, started):
    """Does what is asked, once and in time, and gives the event to be said of it."""
    for request in heard.get("requests", []):
        name = request["id"]
        if not is_right(request):
            continue
        if kept(name) is None and time.time() - started < left(heard["received"], request["expires"]):
            keep(name, "begun")
            keep(name, "@done@" if stop_site() else "@refused@")
        if kept(name) in ("@done@", "@refused@"):
            return {"point": "@point@", "condition": kept(name), "state": "active", "request": name}
    return None


said = None  # what the gateway has still to hear
while True:
    try:
        started = time.time()
        status, heard = post("/heartbeats", {})
        said = look(heard, started) or said
        if said and post("/events", said)[0] == 202:
            said = None
    except OSError as trouble:
        print(trouble)
    time.sleep(60)
