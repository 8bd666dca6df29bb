package org.fizzhull.mesh.reading;

/** The files of the corpus that are well written but hold an odd surface. Volumes in mm3, ANALYTIC. */
final class SurfaceCorpus {
    private static final double CUBE = StlCorpus.CUBE;

    private final StlCorpus corpus;

    private SurfaceCorpus(StlCorpus corpus) {
        this.corpus = corpus;
    }

    static void addTo(StlCorpus corpus) {
        SurfaceCorpus surfaces = new SurfaceCorpus(corpus);
        surfaces.surfaces();
        surfaces.bodies();
        surfaces.mended();
        surfaces.hints();
    }

    private static Soup cube() {
        return StlCorpus.cube();
    }

    private void surfaces() {
        corpus.bad("one facet", Soup.empty().add(0, 0, 0, 9, 0, 0, 0, 9, 0).binary(), "mesh-open", "3 open edges");
        corpus.bad(
                "a hole of one facet",
                cube().without(3).binary(),
                "mesh-open",
                "3 open edges",
                "(40, 0, 40) mm|(40, 40, 40) mm");
        corpus.bad("a hole of two facets in text", cube().without(2, 3).ascii(), "mesh-open", "4 open edges");
        corpus.bad("two holes", cube().without(0, 2).binary(), "mesh-open", "6 open edges");
        corpus.bad("a tube without ends", cube().without(0, 1, 2, 3).binary(), "mesh-open", "8 open edges");
        corpus.bad("a flat sheet", sheet(), "mesh-open", "open edges");
        corpus.bad("two facets back to back", backToBack(), "mesh-flat");
        corpus.bad("facets shrunk to points", Soup.cube(0).binary(), "mesh-flat");
        corpus.bad("facets shrunk to lines", Soup.box(0, 0, 0, 40, 0, 0).binary(), "mesh-flat");
        corpus.bad("a box without height", Soup.box(0, 0, 0, 40, 40, 0).binary(), "mesh-flat");
        corpus.bad(
                "a plate thinner than its numbers",
                Soup.box(0, 0, 0, 40, 40, 1e-8).binary(),
                "mesh-flat");
        corpus.good("a foil", Soup.box(0, 0, 0, 40, 40, 1e-3).binary(), 1.6, "");
        corpus.bad("an inner wall", cube().add(wall()).binary(), "mesh-crowded|mesh-open", "edges");
        corpus.bad("a one-sided surface", kleinBottle(), "mesh-one-sided|mesh-open");
        corpus.good("mixed winding", cube().turn(0, 3, 7).binary(), CUBE, "mesh-winding", "3 facets");
        corpus.good(
                "mixed winding, most facets turned",
                cube().turn(0, 1, 2, 3, 4, 5, 6, 7, 8, 9).binary(),
                CUBE,
                "mesh-winding mesh-inverted",
                "2 facets");
        corpus.good("inside out", cube().turned().binary(), CUBE, "mesh-inverted", "inside out");
        corpus.good("inside out in text", cube().turned().ascii(), CUBE, "mesh-inverted");
        corpus.good(
                "shuffled torus",
                Soup.torus(25, 10, 40, 24).shuffled(1).binary(),
                Soup.torusVolume(25, 10, 40, 24),
                "");
        corpus.good(
                "torus with every third facet turned",
                everyThirdTurned(),
                Soup.torusVolume(25, 10, 40, 24),
                "mesh-winding");
        corpus.good("a sliver", sliver(), 40 * 40 * 40 / 6.0, "");
        corpus.good("a needle", Soup.box(0, 0, 0, 0.001, 0.001, 80).binary(), 8e-5, "");
    }

    private static byte[] sheet() {
        return Soup.empty()
                .add(0, 0, 0, 40, 0, 0, 40, 40, 0)
                .add(0, 0, 0, 40, 40, 0, 0, 40, 0)
                .binary();
    }

    private static byte[] backToBack() {
        return Soup.empty()
                .add(0, 0, 0, 9, 0, 0, 0, 9, 0)
                .add(0, 0, 0, 0, 9, 0, 9, 0, 0)
                .binary();
    }

    private static Soup wall() {
        return Soup.empty().add(0, 0, 0, 40, 40, 0, 40, 40, 40).add(0, 0, 0, 40, 40, 40, 0, 0, 40);
    }

    private static byte[] everyThirdTurned() {
        Soup torus = Soup.torus(25, 10, 40, 24);
        for (int f = 0; f < torus.facets.size(); f += 3) {
            torus.turn(f);
        }
        return torus.binary();
    }

    /** A tetrahedron with a facet cut into a needle of a millionth of its size. */
    private static byte[] sliver() {
        double e = 40e-6;
        return Soup.empty()
                .add(0, 0, 0, 0, 40, 0, 40, 0, 0)
                .add(0, 0, 0, 0, 0, 40, 0, 40, 0)
                .add(0, 0, 0, e, 0, 0, 0, 0, 40)
                .add(e, 0, 0, 40, 0, 0, 0, 0, 40)
                .add(0, 0, 0, 40, 0, 0, e, 0, 0)
                .add(40, 0, 0, 0, 40, 0, 0, 0, 40)
                .binary();
    }

    /** A torus grid whose last ring is sewn to the first mirrored: every edge has two facets, and there is no inside. */
    private static byte[] kleinBottle() {
        int n = 24;
        double[][][] p = new double[n][n][];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double u = Math.PI * 2 * i / n;
                double v = Math.PI * 2 * j / n;
                double r = 20 + 5 * (Math.cos(u / 2) * Math.sin(v) - Math.sin(u / 2) * Math.sin(2 * v));
                double z = 5 * (Math.sin(u / 2) * Math.sin(v) + Math.cos(u / 2) * Math.sin(2 * v));
                p[i][j] = new double[] {r * Math.cos(u), r * Math.sin(u), z + 1e-3 * j};
            }
        }
        Soup soup = Soup.empty();
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                int k = (j + 1) % n;
                double[] b = i + 1 < n ? p[i + 1][j] : p[0][(n - j) % n];
                double[] c = i + 1 < n ? p[i + 1][k] : p[0][(n - k) % n];
                soup.add(p[i][j], b, c).add(p[i][j], c, p[i][k]);
            }
        }
        return soup.binary();
    }

    private void bodies() {
        Soup inner = Soup.box(10, 10, 10, 10, 10, 10);
        Soup far = Soup.box(60, 0, 0, 10, 10, 10);
        corpus.good("a cavity", cube().add(inner.turned()).binary(), CUBE - 1000, "mesh-cavity", "1 cm3");
        corpus.good(
                "a cavity in an inverted body",
                cube().turned().add(inner).binary(),
                CUBE - 1000,
                "mesh-cavity mesh-inverted");
        corpus.good(
                "two cavities",
                cube().add(inner.turned())
                        .add(inner.shifted(12, 12, 12).turned())
                        .binary(),
                CUBE - 2000,
                "mesh-cavity",
                "2 closed hollows");
        corpus.good(
                "a loose body in a cavity",
                cube().add(inner.turned()).add(Soup.box(12, 12, 12, 5, 5, 5)).binary(),
                CUBE - 1000 + 125,
                "mesh-cavity mesh-bodies");
        corpus.good("two bodies", cube().add(far).binary(), CUBE + 1000, "mesh-bodies", "2 separate bodies");
        corpus.good(
                "two bodies, one inside out",
                cube().add(far.turned()).binary(),
                CUBE + 1000,
                "mesh-inverted mesh-bodies",
                "1 of 2");
        corpus.good(
                "two bodies that share a vertex",
                cube().add(Soup.box(40, 40, 40, 10, 10, 10)).binary(),
                CUBE + 1000,
                "mesh-united");
        corpus.good(
                "two bodies that share an edge",
                cube().add(Soup.box(40, 40, 0, 40, 40, 40)).binary(),
                2 * CUBE,
                "mesh-united");
        corpus.good(
                "two bodies that share a whole face",
                cube().add(Soup.box(40, 0, 0, 40, 40, 40)).binary(),
                2 * CUBE,
                "mesh-inner-wall",
                "4 facets");
        corpus.good(
                "a smaller body on a face",
                cube().add(Soup.box(10, 10, 40, 10, 10, 10)).binary(),
                CUBE + 1000,
                "mesh-united");
        corpus.good("nested bodies of the same sign", cube().add(inner).binary(), CUBE, "mesh-nested", "1 surface");
        corpus.good(
                "nested three deep, all alike",
                cube().add(inner).add(Soup.box(12, 12, 12, 2, 2, 2)).binary(),
                CUBE,
                "mesh-nested",
                "2 surfaces");
        corpus.good(
                "a cavity of an inner body that is solid anyway",
                cube().add(inner).add(Soup.box(12, 12, 12, 2, 2, 2).turned()).binary(),
                CUBE,
                "mesh-nested");
        corpus.bad("a body and its copy inside out", cube().add(cube().turned()).binary(), "mesh-flat");
        corpus.bad(
                "a cavity inside out in a cavity",
                cube().add(inner.turned())
                        .add(Soup.box(12, 12, 12, 2, 2, 2).turned())
                        .binary(),
                "mesh-nested",
                "(13, 13, 13) mm");
        corpus.good(
                "overlapping bodies",
                cube().add(Soup.box(20, 20, 20, 40, 40, 40)).binary(),
                2 * CUBE - 8000,
                "mesh-united",
                "2 bodies",
                "8 cm3");
        corpus.bad(
                "a cavity that breaks out",
                cube().add(Soup.box(30, 10, 10, 20, 10, 10).turned()).binary(),
                "mesh-overlap|mesh-nested");
        corpus.good(
                "two bodies that overlap by a hair",
                cube().add(Soup.box(39.999, 0, 0, 40, 40, 40)).binary(),
                2 * CUBE - 1.6,
                "mesh-united",
                "0.002 cm3");
        double[] r = {0, 30, 30, 10, 10, 40, 40, 0};
        double[] z = {0, 0, 30, 30, 15, 15, 40, 40};
        // an octagon of radius 1 covers 2 sqrt 2
        corpus.good(
                "a turned wall through itself",
                Soup.revolved(r, z, 8).binary(),
                2 * Math.sqrt(2) * (900 * 15 + 1600 * 25),
                "mesh-united",
                "runs through itself");
        double[] pushed = {0, 8, 8, 20, 20, 4, 4, 0};
        double[] down = {-10, -10, 0, 0, 20, 20, -20, -20};
        corpus.bad(
                "a top pushed down through the bottom",
                Soup.revolved(pushed, down, 8).binary(),
                "mesh-overlap");
        corpus.bad("more bodies than can be meant", manyCubes(1100), "mesh-many-bodies", "1100");
        corpus.good("three hundred bodies", manyCubes(300), 300, "mesh-bodies", "300");
    }

    private static byte[] manyCubes(int n) {
        Soup soup = Soup.empty();
        for (int i = 0; i < n; i++) {
            soup.add(Soup.box(3 * (i % 20), 3 * (i / 20 % 20), 3 * (i / 400), 1, 1, 1));
        }
        return soup.binary();
    }

    private void mended() {
        corpus.good("one facet twice", cube().add(first(1)).binary(), CUBE, "mesh-duplicates", "1 facets");
        corpus.good("every facet twice", cube().add(cube()).binary(), CUBE, "mesh-duplicates", "12 facets");
        corpus.good(
                "every facet three times, shuffled",
                cube().add(cube()).add(cube()).shuffled(4).binary(),
                CUBE,
                "mesh-duplicates",
                "24 facets");
        corpus.good(
                "one facet again the other way round",
                cube().add(first(1).turned()).binary(),
                CUBE,
                "mesh-duplicates");
        corpus.good(
                "facets shrunk to a point",
                cube().add(1, 1, 1, 1, 1, 1, 1, 1, 1).binary(),
                CUBE,
                "mesh-collapsed",
                "1 of 13");
        corpus.good(
                "facets shrunk to a line",
                cube().add(0, 0, 0, 40, 0, 0, 0, 0, 0).binary(),
                CUBE,
                "mesh-collapsed");
        corpus.good(
                "a facet without area too many",
                cube().add(0, 0, 0, 10, 0, 0, 40, 0, 0).binary(),
                CUBE,
                "mesh-no-area");
        corpus.good("a T-junction", tJunction(10), CUBE, "mesh-t-junction", "1 corners", "(10, 0, 0) mm");
        corpus.good("a T-junction off by rounding", tJunction(13.37), CUBE, "mesh-t-junction");
        corpus.good("an edge with many T-junctions", manyTJunctions(100), CUBE, "mesh-t-junction", "99 corners");
        corpus.good("an edge with 5,999 T-junctions", manyTJunctions(6000), CUBE, "mesh-t-junction", "5999 corners");
        corpus.good("a T-junction filled by a facet without area", filledTJunction(), CUBE, "");
        corpus.good(
                "a crack of a tenth of a micrometre", cube().set(0, 0, 1e-4f).binary(), CUBE, "mesh-near", "1 corners");
        corpus.bad("a crack of a tenth of a millimetre", cube().set(0, 0, 0.1f).binary(), "mesh-open", "open edges");
        corpus.good(
                "a flake beside the body",
                cube().add(100, 0, 0, 110, 0, 0, 100, 10, 0)
                        .add(100, 0, 0, 100, 10, 0, 110, 0, 0)
                        .binary(),
                CUBE,
                "mesh-flat-part",
                "2 facets");
        corpus.good(
                "a single stray facet beside the body",
                cube().add(100, 0, 0, 110, 0, 0, 100, 10, 0).binary(),
                CUBE,
                "mesh-stray",
                "1 facet");
        corpus.good(
                "a flap on an edge of the body",
                cube().add(0, 0, 0, 40, 0, 0, 20, -10, 0).binary(),
                CUBE,
                "mesh-stray");
        // ANALYTIC: one flat quad of the torus is missing; a fan in its plane puts it back
        corpus.good(
                "a small hole",
                Soup.torus(25, 10, 40, 24)
                        .without(2 * 24 * 3 + 10, 2 * 24 * 3 + 11)
                        .binary(),
                Soup.torusVolume(25, 10, 40, 24),
                "mesh-hole",
                "1 hole");
        int quad = 2 * 24 * 3 + 10;
        int across = 2 * 24 * 4 + 12;
        corpus.good(
                "two small holes that meet in a corner",
                Soup.torus(25, 10, 40, 24)
                        .without(quad, quad + 1, across, across + 1)
                        .binary(),
                Soup.torusVolume(25, 10, 40, 24),
                "mesh-hole",
                "2 holes");
        // over the two edges at a corner of a quad, which three facets share then, with a third edge of its own
        Soup stray = Soup.torus(25, 10, 40, 24);
        float[] one = stray.facets.get(quad);
        float[] other = stray.facets.get(quad + 1);
        stray.facets.add(new float[] {one[0], one[1], one[2], one[3], one[4], one[5], other[6], other[7], other[8]});
        corpus.good(
                "a stray facet over two edges",
                stray.binary(),
                Soup.torusVolume(25, 10, 40, 24),
                "mesh-hole mesh-flat-part",
                "1 hole");
    }

    private static Soup first(int n) {
        Soup soup = Soup.empty();
        soup.facets.addAll(cube().facets.subList(0, n));
        return soup;
    }

    /** The cube whose edge from the origin along x is divided at one of its two faces only. */
    private static byte[] tJunction(double x) {
        return divided(x).binary();
    }

    private static Soup divided(double x) {
        Soup cube = cube();
        // facet 4 of the box is (0,0,0) (40,0,0) (40,0,40), on the side y = 0
        cube.without(4);
        return cube.add(0, 0, 0, x, 0, 0, 40, 0, 40).add(x, 0, 0, 40, 0, 0, 40, 0, 40);
    }

    private static byte[] manyTJunctions(int parts) {
        Soup cube = cube().without(4);
        for (int i = 0; i < parts; i++) {
            cube.add(40.0 * i / parts, 0, 0, 40.0 * (i + 1) / parts, 0, 0, 40, 0, 40);
        }
        return cube.binary();
    }

    private static byte[] filledTJunction() {
        return divided(10).add(0, 0, 0, 40, 0, 0, 10, 0, 0).binary();
    }

    private void hints() {
        corpus.good("a cube in inches", Soup.cube(2.5).binary(), 15.625, "mesh-size", "unit=in it would be 63.5 mm");
        corpus.good("a cube in metres", Soup.cube(0.065).binary(), 2.74625e-4, "mesh-size", "unit=m it would be 65 mm");
        corpus.good("a cube in micrometres", Soup.cube(65_000).binary(), 2.74625e14, "mesh-size", "65000 mm");
        corpus.good(
                "a thin shell",
                cube().add(Soup.box(0.5, 0.5, 0.5, 39, 39, 39).turned()).binary(),
                CUBE - 59_319,
                "mesh-cavity mesh-thin",
                "mould");
    }
}
