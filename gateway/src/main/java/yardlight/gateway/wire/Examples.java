package yardlight.gateway.wire;

/**
 * A heartbeat of a box, ready to paste.
 *
 * @param curl for a shell: a heartbeat, and an event that calls nobody
 * @param microPython for a board that is in its network already
 * @param arduino for an ESP32 or ESP8266
 */
public record Examples(String curl, String microPython, String arduino) {

    private static final String CURL = """
        curl ADDRESS/api/v1/heartbeats \\
          -H 'Authorization: Bearer KEY' \\
          -H 'Content-Type: application/json' \\
          -d '{"uptime": 60, "battery": 12.7}'

        curl ADDRESS/api/v1/events \\
          -H 'Authorization: Bearer KEY' \\
          -d point=water-tank -d condition=high-high -d state=normal
        """;

    private static final String MICRO_PYTHON = """
        import time
        import urequests

        URL = "ADDRESS/api/v1/heartbeats"
        KEY = "KEY"
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
        """;

    private static final String ARDUINO = """
        #if defined(ESP8266)
        #include <ESP8266WiFi.h>
        #include <ESP8266HTTPClient.h>
        #else
        #include <WiFi.h>
        #include <HTTPClient.h>
        #endif
        SECURE
        const char* URL = "ADDRESS/api/v1/heartbeats";
        const char* KEY = "KEY";

        void setup() {
          Serial.begin(115200);
          WiFi.begin("NETWORK", "PASSWORD");
        }

        void loop() {
          if (WiFi.status() == WL_CONNECTED) {
            CLIENT
            HTTPClient http;
            http.begin(client, URL);
            http.addHeader("Authorization", String("Bearer ") + KEY);
            http.addHeader("Content-Type", "application/json");
            int status = http.POST("{\\"uptime\\": " + String(millis() / 1000) + "}");
            Serial.println(status > 0 ? http.getString() : http.errorToString(status));
            http.end();
          }
          delay(60000);
        }
        """;

    /**
     * @param address without a slash at its end
     * @param key or what says where there is one
     */
    public static Examples of(String address, String key) {
        boolean secure = address.startsWith("https:");
        String arduino = ARDUINO.replace("SECURE\n", secure ? "#include <WiFiClientSecure.h>\n\n" : "\n")
                .replace(
                        "CLIENT",
                        secure ? "WiFiClientSecure client;\n    client.setInsecure();" : "WiFiClient client;");
        return new Examples(with(CURL, address, key), with(MICRO_PYTHON, address, key), with(arduino, address, key));
    }

    private static String with(String example, String address, String key) {
        return example.replace("ADDRESS", address)
                .replace("Bearer KEY", "Bearer " + key)
                .replace("\"KEY\"", '"' + key + '"');
    }
}
