package yardlight.escalation.tank;

import java.util.List;

/**
 * A tank that somebody measured: a table of heights with what is below each. Between two rows both grow evenly; below the
 * first row from nothing at the bottom; the last row is the brim.
 *
 * @param rows at least one, both heights and volumes strictly rising and above 0; a first row of 0 and 0 may stand there
 */
public record Strapping(List<Row> rows) implements Tank {

    /** This much volume below this height. */
    public record Row(double height, double volume) {}

    public Strapping {
        Row before = new Row(0, 0);
        List<Row> kept = !rows.isEmpty() && rows.get(0).equals(before) ? rows.subList(1, rows.size()) : rows;
        if (kept.isEmpty()) {
            throw new IllegalArgumentException("strapping must have a row above the bottom: " + rows);
        }
        for (Row row : kept) {
            boolean rises = row.height() > before.height() && row.volume() > before.volume();
            if (!rises || Double.isInfinite(row.height()) || Double.isInfinite(row.volume())) {
                throw new IllegalArgumentException("strapping must rise from row to row: " + row.height());
            }
            before = row;
        }
        rows = List.copyOf(kept);
    }

    @Override
    public double brim() {
        return last().height();
    }

    @Override
    public double volume(double height) {
        double wanted = Tank.within(brim(), height);
        Row below = new Row(0, 0);
        for (Row row : rows) {
            if (wanted <= row.height()) {
                double share = (wanted - below.height()) / (row.height() - below.height());
                return below.volume() + share * (row.volume() - below.volume());
            }
            below = row;
        }
        return below.volume();
    }

    @Override
    public double height(double volume) {
        double wanted = Tank.within(last().volume(), volume);
        Row below = new Row(0, 0);
        for (Row row : rows) {
            if (wanted <= row.volume()) {
                double share = (wanted - below.volume()) / (row.volume() - below.volume());
                return below.height() + share * (row.height() - below.height());
            }
            below = row;
        }
        return below.height();
    }

    private Row last() {
        return rows.get(rows.size() - 1);
    }
}
