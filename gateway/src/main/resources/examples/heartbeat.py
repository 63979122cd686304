import time
import urequests

URL = "@address@/api/v1/heartbeats"
KEY = "@key@"
started = time.time()

while True:
    said = {"uptime": int(time.time() - started)}
    try:
        answer = urequests.post(URL, json=said, headers={"Authorization": "Bearer " + KEY})
        print(answer.status_code, answer.text)
        answer.close()
    except OSError as trouble:
        print(trouble)
    time.sleep(60)
