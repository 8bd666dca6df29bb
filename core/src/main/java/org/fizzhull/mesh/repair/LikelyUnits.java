package org.fizzhull.mesh.repair;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.quantity.Unit;

/** The units in which the numbers of a file would make a piece of 10 to 300 mm [assumed: what is made by hand]. */
public final class LikelyUnits {
    /** Shortest piece, m. */
    public static final double SMALLEST = 0.010;

    /** Longest piece, m. */
    public static final double LARGEST = 0.300;

    private static final List<Unit> UNITS =
            List.of(Unit.MILLIMETRE, Unit.CENTIMETRE, Unit.INCH, Unit.METRE, Unit.MICROMETRE);

    private LikelyUnits() {}

    /**
     * {@return a sentence that names them; empty where there is none but the one in use}
     *
     * @param longest side of the body in the unit in use, m
     * @param metresPerUnit length of the unit in use, m
     */
    public static String of(double longest, double metresPerUnit) {
        List<String> others = new ArrayList<>();
        for (Unit unit : UNITS) {
            double length = longest / metresPerUnit * unit.toSi(1);
            boolean other = Math.abs(unit.toSi(1) / metresPerUnit - 1) > 1e-9;
            if (other && length >= SMALLEST && length <= LARGEST) {
                others.add("unit=" + unit.symbol() + " it would be " + rounded(length) + " mm");
            }
        }
        return others.isEmpty() ? "" : "With " + String.join(", with ", others) + ".";
    }

    /**
     * {@return a length in mm to four digits}
     *
     * @param metres length, m
     */
    public static String rounded(double metres) {
        double digits = Math.pow(10, 3 - Math.floor(Math.log10(Math.abs(metres))));
        return PlaceWords.millimetres(metres > 0 ? Math.rint(metres * digits) / digits : metres);
    }
}
