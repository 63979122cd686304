package yardlight.demo.lease;

/**
 * Where every barrel came from and went since the beginning, bbl.
 *
 * @param lifted came up the wells
 * @param rained came through the hatch
 * @param injected reached the ground
 * @param hauled went away by truck
 * @param spilled ran out of a line
 * @param overflowed ran over a brim
 * @param held is in separator and tanks now, less what was there at the beginning
 */
public record Ledger(
        double lifted, double rained, double injected, double hauled, double spilled, double overflowed, double held) {

    /** What is missing: nothing, but for rounding. */
    public double missing() {
        return lifted + rained - injected - hauled - spilled - overflowed - held;
    }
}
