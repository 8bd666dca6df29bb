package org.fizzhull.validation.speed;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.mesh.reading.MeshReader;
import org.fizzhull.mesh.reading.StlWriter;
import org.fizzhull.quantity.Unit;

/** Reads one STL and prints what it measures, to be timed from outside by {@code stl-speed.sh}, which also calls this. */
public final class MeasureStl {
    private MeasureStl() {}

    /**
     * {@code FILE} measures; {@code make FILE AROUND ACROSS} writes a torus of 2 AROUND ACROSS facets, neighbours after
     * one another; {@code shuffle FROM TO} writes the facets of a file in another order.
     */
    public static void main(String[] args) throws IOException {
        if (args[0].equals("make")) {
            TriangleMesh torus = torus(Integer.parseInt(args[2]), Integer.parseInt(args[3]));
            Files.write(Path.of(args[1]), StlWriter.binary(torus, "torus", 1e-3).array());
        } else if (args[0].equals("shuffle")) {
            byte[] bytes = Files.readAllBytes(Path.of(args[1]));
            shuffle(bytes);
            Files.write(Path.of(args[2]), bytes);
        } else {
            measure(args[0]);
        }
    }

    private static void measure(String file) throws IOException {
        try (FileChannel channel = FileChannel.open(Path.of(file))) {
            print(MeshReader.read(
                    channel.map(FileChannel.MapMode.READ_ONLY, 0, channel.size()), file, Unit.MILLIMETRE));
        }
    }

    /** Exchanges each facet with one before it. */
    private static void shuffle(byte[] bytes) {
        SplittableRandom random = new SplittableRandom(7);
        byte[] kept = new byte[50];
        for (int f = (bytes.length - 84) / 50 - 1; f > 0; f--) {
            int other = 84 + 50 * random.nextInt(f + 1);
            System.arraycopy(bytes, other, kept, 0, 50);
            System.arraycopy(bytes, 84 + 50 * f, bytes, other, 50);
            System.arraycopy(kept, 0, bytes, 84 + 50 * f, 50);
        }
    }

    private static void print(MeshReader.Reading reading) {
        MassProperties all = MassProperties.of(reading.mesh());
        System.out.println("volume_m3 " + all.volume() + "\narea_m2 " + all.area());
        System.out.println("centroid_m " + all.centroid().x() + " "
                + all.centroid().y() + " " + all.centroid().z());
        System.out.println("inertia_m5 " + all.inertiaX() + " " + all.inertiaY() + " " + all.inertiaZ());
        System.out.println(
                "bodies " + reading.bodies() + "\nnotices " + reading.notices().size());
    }

    /** Torus of 22.5 mm and 12.5 mm. */
    private static TriangleMesh torus(int around, int across) {
        double[] xyz = new double[3 * around * across];
        int[] corners = new int[6 * around * across];
        for (int i = 0; i < around; i++) {
            for (int j = 0; j < across; j++) {
                double u = 2 * Math.PI * i / around;
                double v = 2 * Math.PI * j / across;
                int a = i * across + j;
                int b = (i + 1) % around * across + j;
                int c = (i + 1) % around * across + (j + 1) % across;
                int d = i * across + (j + 1) % across;
                xyz[3 * a] = (0.0225 + 0.0125 * Math.cos(v)) * Math.cos(u);
                xyz[3 * a + 1] = (0.0225 + 0.0125 * Math.cos(v)) * Math.sin(u);
                xyz[3 * a + 2] = 0.0125 * Math.sin(v);
                int[] two = {a, b, c, a, c, d};
                System.arraycopy(two, 0, corners, 6 * a, 6);
            }
        }
        return new TriangleMesh(xyz, corners);
    }
}
