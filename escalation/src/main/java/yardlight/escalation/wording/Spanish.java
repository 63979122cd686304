package yardlight.escalation.wording;

import java.util.Locale;
import java.util.Map;

final class Spanish implements Phrases {

    private static final Map<String, String> CONDITIONS = Map.ofEntries(
            Map.entry("high-high", "ALTO-ALTO"),
            Map.entry("high", "ALTO"),
            Map.entry("low", "BAJO"),
            Map.entry("low-low", "BAJO-BAJO"),
            Map.entry("off", "APAGADO"),
            Map.entry("on", "ENCENDIDO"),
            Map.entry("power-off", "SIN ENERGÍA"),
            Map.entry("comms-loss", "SIN COMUNICACIÓN"),
            Map.entry("silent", "EN SILENCIO"),
            Map.entry("fault", "FALLA"),
            Map.entry("down", "CAÍDO"),
            Map.entry("stuck", "ATASCADO"),
            Map.entry("missing", "FALTA"),
            Map.entry("door-open", "PUERTA ABIERTA"),
            Map.entry("open", "ABIERTO"),
            Map.entry("closed", "CERRADO"),
            Map.entry("stopped", "PARADO"),
            Map.entry("running", "EN MARCHA"),
            Map.entry("tripped", "DISPARADO"),
            Map.entry("leak", "FUGA"),
            Map.entry("said-stop", "DIJO STOP"),
            Map.entry("low-battery", "BATERÍA BAJA"));

    @Override
    public String condition(String condition) {
        return CONDITIONS.getOrDefault(condition, condition.toUpperCase(Locale.ROOT));
    }

    @Override
    public String box() {
        return "CAJA";
    }

    @Override
    public String limit(String number) {
        return "límite " + number;
    }

    @Override
    public String returned(String time) {
        return time.isEmpty() ? "normal" : "normal desde " + time;
    }

    @Override
    public String wantsReset() {
        return "falta restablecer";
    }

    @Override
    public String times(int count) {
        return count + " veces";
    }

    @Override
    public String reply(int code) {
        return "Responda OK " + code;
    }

    @Override
    public String replyAll() {
        return "Responda ALL";
    }

    @Override
    public String or() {
        return "o";
    }

    @Override
    public String alarmsHere(int alarms) {
        return alarms + " alarmas, la peor";
    }

    @Override
    public String alarmsAt(int alarms, int sites) {
        return alarms + " alarmas en " + sites + " sitios";
    }

    @Override
    public String then() {
        return "luego";
    }
}
