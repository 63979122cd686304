import time
import urequests

URL = "@address@/api/v1/readings"
KEY = "@key@"


def level():
    return 12.4  # what the sensor says, in ft


while True:
    said = {"point": "water-tank", "value": level(), "unit": "ft"}
    try:
        answer = urequests.post(URL, json=said, headers={"Authorization": "Bearer " + KEY})
        print(answer.status_code, answer.text)
        answer.close()
    except OSError as trouble:
        print(trouble)
    time.sleep(60)
