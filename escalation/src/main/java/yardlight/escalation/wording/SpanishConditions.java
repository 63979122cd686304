package yardlight.escalation.wording;

import java.util.Map;

/** Conditions in Spanish. */
final class SpanishConditions {

    static final Map<String, String> NAMES = Map.ofEntries(
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
            Map.entry("no-readings", "SIN LECTURAS"),
            Map.entry("rising-fast", "SUBE RÁPIDO"),
            Map.entry("falling-fast", "BAJA RÁPIDO"),
            Map.entry("drift", "SE DESVÍA"),
            Map.entry("sensor-fault", "FALLA DEL SENSOR"),
            Map.entry("overflow", "REBOSA"),
            Map.entry("will-overflow", "VA A REBOSAR"),
            Map.entry("runs-less", "TRABAJA MENOS"),
            Map.entry("runs-more", "TRABAJA MÁS"),
            Map.entry("running-without-effect", "TRABAJA EN VANO"),
            Map.entry("falling-without-pump", "BAJA SIN BOMBA"),
            Map.entry("door-open", "PUERTA ABIERTA"),
            Map.entry("open", "ABIERTO"),
            Map.entry("closed", "CERRADO"),
            Map.entry("stopped", "PARADO"),
            Map.entry("running", "EN MARCHA"),
            Map.entry("tripped", "DISPARADO"),
            Map.entry("leak", "FUGA"),
            Map.entry("said-stop", "DIJO STOP"),
            Map.entry("low-battery", "BATERÍA BAJA"),
            Map.entry("not-confirmed", "SIN CONFIRMAR"));
    /** What some of them may mean. */
    static final Map<String, String> MEANINGS = Map.of(
            "runs-less", "Quizá entra menos fluido: un pozo parado o una fuga",
            "runs-more", "La bomba puede estar gastada",
            "running-without-effect", "Bomba en marcha sin efecto: banda, basura o válvula",
            "falling-without-pump", "Baja sin bombeo: una fuga o un interruptor pegado",
            "leak", "Nunca bajó tan rápido: una línea abierta");

    private SpanishConditions() {}
}
