package org.fizzhull.mesh.repair;

/** The units in which the numbers of a file would make a piece of 10 to 300 mm [assumed: what is made by hand]. */
public final class LikelyUnits {
    public static final double SMALLEST = 0.010;
    public static final double LARGEST = 0.300;

    private static final double[] UNITS = {1e-3, 1e-2, 25.4e-3, 1, 1e-6};
    private static final String[] NAMES = {"mm", "cm", "in", "m", "um"};

    private LikelyUnits() {}

    /**
     * {@return a sentence that names them; empty where there is none but the one in use}
     *
     * @param longest side of the body in the unit in use, m
     * @param metresPerUnit length of the unit in use, m
     */
    public static String of(double longest, double metresPerUnit) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < UNITS.length; i++) {
            double length = longest / metresPerUnit * UNITS[i];
            boolean other = Math.abs(UNITS[i] / metresPerUnit - 1) > 1e-9;
            if (other && length >= SMALLEST && length <= LARGEST) {
                text.append(text.length() == 0 ? "With " : ", with ")
                        .append("unit=")
                        .append(NAMES[i])
                        .append(" it would be ")
                        .append(rounded(length))
                        .append(" mm");
            }
        }
        return text.length() == 0 ? "" : text.append('.').toString();
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
