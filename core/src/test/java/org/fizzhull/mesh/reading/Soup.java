package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Loose facets, as a file holds them, for tests: nine numbers each. Written without the code under test. */
final class Soup {
    final List<float[]> facets = new ArrayList<>();

    static Soup empty() {
        return new Soup();
    }

    /** Box with outward facets, low corner and sides given: 12 facets. */
    static Soup box(double x, double y, double z, double sx, double sy, double sz) {
        double[][] p = new double[8][];
        for (int i = 0; i < 8; i++) {
            p[i] = new double[] {x + (i & 1) * sx, y + (i >> 1 & 1) * sy, z + (i >> 2) * sz};
        }
        int[][] quads = {{0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}};
        Soup soup = new Soup();
        for (int[] q : quads) {
            soup.add(p[q[0]], p[q[1]], p[q[2]]).add(p[q[0]], p[q[2]], p[q[3]]);
        }
        return soup;
    }

    static Soup cube(double side) {
        return box(0, 0, 0, side, side, side);
    }

    /** Torus about z, {@code around} times {@code across} quads. */
    static Soup torus(double ring, double tube, int around, int across) {
        double[][][] p = new double[around][across][];
        for (int i = 0; i < around; i++) {
            for (int j = 0; j < across; j++) {
                double u = 2 * Math.PI * i / around;
                double v = 2 * Math.PI * j / across;
                double r = ring + tube * Math.cos(v);
                p[i][j] = new double[] {r * Math.cos(u), r * Math.sin(u), tube * Math.sin(v)};
            }
        }
        return grid(p);
    }

    /** Torus whose tube turns once about itself on the way round: no two neighbours lie in a plane. */
    static Soup twistedTorus(double ring, double tube, int around, int across) {
        double[][][] p = new double[around][across][];
        for (int i = 0; i < around; i++) {
            for (int j = 0; j < across; j++) {
                double u = 2 * Math.PI * i / around;
                double v = 2 * Math.PI * j / across + u;
                double r = ring + tube * Math.cos(v);
                p[i][j] = new double[] {r * Math.cos(u), r * Math.sin(u), tube * Math.sin(v)};
            }
        }
        return grid(p);
    }

    private static Soup grid(double[][][] p) {
        int around = p.length;
        int across = p[0].length;
        Soup soup = new Soup();
        for (int i = 0; i < around; i++) {
            for (int j = 0; j < across; j++) {
                double[] a = p[i][j];
                double[] b = p[(i + 1) % around][j];
                double[] c = p[(i + 1) % around][(j + 1) % across];
                double[] d = p[i][(j + 1) % across];
                soup.add(a, b, c).add(a, c, d);
            }
        }
        return soup;
    }

    /** A round tube along a lying figure of eight: one closed surface that runs through itself in the middle. */
    static Soup figureOfEight(int along, int around) {
        double[][][] p = new double[along][around][];
        for (int i = 0; i < along; i++) {
            double t = 2 * Math.PI * i / along;
            double length = Math.hypot(40 * Math.cos(t), 50 * Math.cos(2 * t));
            double nx = 50 * Math.cos(2 * t) / length;
            double ny = -40 * Math.cos(t) / length;
            for (int j = 0; j < around; j++) {
                double v = 2 * Math.PI * j / around;
                p[i][j] = new double[] {
                    40 * Math.sin(t) + 6 * Math.cos(v) * nx,
                    25 * Math.sin(2 * t) + 6 * Math.cos(v) * ny,
                    6 * Math.sin(v)
                };
            }
        }
        return grid(p);
    }

    /** Volume inside that torus as a polyhedron: a polygon swept round in {@code around} flat steps. */
    static double torusVolume(double ring, double tube, int around, int across) {
        double area = across / 2.0 * tube * tube * Math.sin(2 * Math.PI / across);
        return around * Math.sin(2 * Math.PI / around) * ring * area;
    }

    /** A profile from the axis to the axis, at radii r and rising heights z, turned about z in flat steps. */
    static Soup revolved(double[] r, double[] z, int around) {
        Soup soup = new Soup();
        for (int i = 0; i < around; i++) {
            double u = 2 * Math.PI * i / around;
            double v = 2 * Math.PI * ((i + 1) % around) / around;
            for (int k = 0; k + 1 < r.length; k++) {
                double[] a = {r[k] * Math.cos(u), r[k] * Math.sin(u), z[k]};
                double[] b = {r[k] * Math.cos(v), r[k] * Math.sin(v), z[k]};
                double[] c = {r[k + 1] * Math.cos(v), r[k + 1] * Math.sin(v), z[k + 1]};
                double[] d = {r[k + 1] * Math.cos(u), r[k + 1] * Math.sin(u), z[k + 1]};
                if (r[k] > 0) {
                    soup.add(a, b, c);
                }
                if (r[k + 1] > 0) {
                    soup.add(a, c, d);
                }
            }
        }
        return soup;
    }

    /** Ball about the origin, by 2 n chords around and n from pole to pole. */
    static Soup ball(double radius, int n) {
        double[] r = new double[n + 1];
        double[] z = new double[n + 1];
        for (int k = 0; k <= n; k++) {
            r[k] = k % n == 0 ? 0 : radius * Math.sin(Math.PI * k / n);
            z[k] = -radius * Math.cos(Math.PI * k / n);
        }
        return revolved(r, z, 2 * n);
    }

    Soup add(double[] a, double[] b, double[] c) {
        return add(a[0], a[1], a[2], b[0], b[1], b[2], c[0], c[1], c[2]);
    }

    Soup add(double... nine) {
        float[] facet = new float[9];
        for (int i = 0; i < 9; i++) {
            facet[i] = (float) nine[i];
        }
        facets.add(facet);
        return this;
    }

    Soup add(Soup other) {
        for (float[] facet : other.facets) {
            facets.add(facet.clone());
        }
        return this;
    }

    /** The same facets the other way round. */
    Soup turned() {
        Soup soup = new Soup();
        for (float[] f : facets) {
            soup.facets.add(new float[] {f[0], f[1], f[2], f[6], f[7], f[8], f[3], f[4], f[5]});
        }
        return soup;
    }

    Soup turn(int... which) {
        for (int i : which) {
            float[] f = facets.get(i);
            facets.set(i, new float[] {f[0], f[1], f[2], f[6], f[7], f[8], f[3], f[4], f[5]});
        }
        return this;
    }

    Soup without(int... which) {
        for (int i : which) {
            facets.set(i, new float[0]);
        }
        facets.removeIf(f -> f.length == 0);
        return this;
    }

    Soup set(int facet, int at, float value) {
        facets.get(facet)[at] = value;
        return this;
    }

    Soup shifted(double x, double y, double z) {
        double[] by = {x, y, z};
        Soup soup = new Soup();
        for (float[] f : facets) {
            float[] g = f.clone();
            for (int i = 0; i < 9; i++) {
                g[i] = (float) (f[i] + by[i % 3]);
            }
            soup.facets.add(g);
        }
        return soup;
    }

    /** The same facets turned by an angle about an axis through the origin (Rodrigues' formula). */
    Soup rotated(double angle, double... axis) {
        double length = Math.sqrt(axis[0] * axis[0] + axis[1] * axis[1] + axis[2] * axis[2]);
        Soup soup = new Soup();
        for (float[] f : facets) {
            float[] g = new float[9];
            for (int i = 0; i < 9; i += 3) {
                double along = (f[i] * axis[0] + f[i + 1] * axis[1] + f[i + 2] * axis[2]) / length;
                for (int k = 0; k < 3; k++) {
                    int l = (k + 1) % 3;
                    int m = (k + 2) % 3;
                    double across = (axis[l] * f[i + m] - axis[m] * f[i + l]) / length;
                    g[i + k] = (float) (f[i + k] * Math.cos(angle)
                            + across * Math.sin(angle)
                            + axis[k] / length * along * (1 - Math.cos(angle)));
                }
            }
            soup.facets.add(g);
        }
        return soup;
    }

    Soup scaled(double by) {
        Soup soup = new Soup();
        for (float[] f : facets) {
            float[] g = f.clone();
            for (int i = 0; i < 9; i++) {
                g[i] = (float) (f[i] * by);
            }
            soup.facets.add(g);
        }
        return soup;
    }

    Soup shuffled(long seed) {
        java.util.Collections.shuffle(facets, new Random(seed));
        return this;
    }

    byte[] binary() {
        return binary("made for a test", facets.size(), 0);
    }

    /** Binary with any header, any count and trailing zero bytes. */
    byte[] binary(String header, long count, int trailing) {
        ByteBuffer bytes =
                ByteBuffer.allocate(84 + 50 * facets.size() + trailing).order(ByteOrder.LITTLE_ENDIAN);
        byte[] name = header.getBytes(StandardCharsets.ISO_8859_1);
        bytes.put(name, 0, Math.min(80, name.length)).position(80);
        bytes.putInt((int) count);
        for (float[] facet : facets) {
            bytes.putFloat(0).putFloat(0).putFloat(0);
            for (float value : facet) {
                bytes.putFloat(value);
            }
            bytes.putShort((short) 0);
        }
        return bytes.array();
    }

    String ascii() {
        return ascii("a test", "%s");
    }

    /** ASCII with a name and a format for numbers. */
    String ascii(String name, String number) {
        StringBuilder text = new StringBuilder("solid ").append(name).append('\n');
        for (float[] f : facets) {
            text.append("facet normal 0 0 0\n outer loop\n");
            for (int i = 0; i < 9; i += 3) {
                text.append("  vertex");
                for (int k = i; k < i + 3; k++) {
                    text.append(' ').append(String.format(Locale.ROOT, number, f[k]));
                }
                text.append('\n');
            }
            text.append(" endloop\nendfacet\n");
        }
        return text.append("endsolid ").append(name).append('\n').toString();
    }
}
