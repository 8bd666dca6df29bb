package org.fizzhull.cli.attack;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Bytes of STL files, text and binary. */
final class MeshBytes {
    private MeshBytes() {}

    /** A closed body of triangles, in places holed, turned inside out, flattened, torn apart or without end. */
    static byte[] of(Dice dice) {
        List<double[]> facets = new ArrayList<>();
        double size = dice.once(4) ? dice.spread(0.01, 3000) : dice.between(20, 60);
        double flat = dice.once(6) ? dice.spread(1e-4, 1) : 1;
        boolean ball = dice.once(2);
        int rings = dice.of(2, 3, 6, 12);
        int sides = dice.of(3, 4, 8, 20);
        for (int i = 0; i < rings; i++) {
            for (int k = 0; k < sides; k++) {
                double[] a = corner(i, k, rings, sides, size, flat, ball);
                double[] b = corner(i, k + 1, rings, sides, size, flat, ball);
                double[] c = corner(i + 1, k + 1, rings, sides, size, flat, ball);
                double[] d = corner(i + 1, k, rings, sides, size, flat, ball);
                if (i > 0) {
                    facets.add(new double[] {a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]});
                }
                if (i < rings - 1) {
                    facets.add(new double[] {a[0], a[1], a[2], c[0], c[1], c[2], d[0], d[1], d[2]});
                }
            }
        }
        for (int i = dice.once(3) ? 1 + dice.below(3) : 0; i > 0; i--) {
            double[] facet = dice.of(facets);
            switch (dice.below(5)) {
                case 0 -> facets.remove(facet);
                case 1 -> facets.add(facet.clone());
                case 2 -> facet[dice.below(9)] = dice.of(0.0, 1e30, Double.NaN, -1e9, Double.POSITIVE_INFINITY, 1e-30);
                case 3 -> facet[dice.below(9)] += size * dice.between(-1, 1);
                default -> {
                    double x = facet[0];
                    facet[0] = facet[3];
                    facet[3] = x;
                }
            }
        }
        return dice.once(2) ? binary(facets) : ascii(facets);
    }

    private static double[] corner(int ring, int side, int rings, int sides, double size, double flat, boolean ball) {
        double polar = Math.PI * ring / rings;
        double turn = 2 * Math.PI * (side % sides) / sides;
        double radius = ring == 0 || ring == rings ? 0 : size * (ball ? Math.sin(polar) : 1);
        double height = size * flat * (1 - (ball ? Math.cos(polar) : 1 - 2.0 * ring / rings));
        return new double[] {(float) (radius * Math.cos(turn)), (float) (-radius * Math.sin(turn)), (float) height};
    }

    private static byte[] binary(List<double[]> facets) {
        ByteBuffer bytes = ByteBuffer.allocate(84 + 50 * facets.size()).order(ByteOrder.LITTLE_ENDIAN);
        bytes.position(80);
        bytes.putInt(facets.size());
        for (double[] facet : facets) {
            bytes.putFloat(0).putFloat(0).putFloat(0);
            for (double value : facet) {
                bytes.putFloat((float) value);
            }
            bytes.putShort((short) 0);
        }
        return bytes.array();
    }

    private static byte[] ascii(List<double[]> facets) {
        StringBuilder text = new StringBuilder("solid body\n");
        for (double[] facet : facets) {
            text.append("facet normal 0 0 0\nouter loop\n");
            for (int i = 0; i < 9; i += 3) {
                text.append("vertex ")
                        .append(facet[i])
                        .append(' ')
                        .append(facet[i + 1])
                        .append(' ')
                        .append(facet[i + 2])
                        .append('\n');
            }
            text.append("endloop\nendfacet\n");
        }
        return text.append("endsolid body\n").toString().getBytes(StandardCharsets.UTF_8);
    }
}
