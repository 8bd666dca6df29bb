package org.fizzhull.validation.speed;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.hydrostatics.Attitude;
import org.fizzhull.hydrostatics.Attitudes;
import org.fizzhull.hydrostatics.Draft;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.MeshDepth;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.mesh.reading.MeshReader;
import org.fizzhull.mesh.reading.StlWriter;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.body.PolyhedronHull;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Meshes against their number of facets: the oval ring, its STL read from memory. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class MeshSpeed {
    private static final double MILLIMETRE = 1e-3;
    private static final double RATIO = 0.9;
    private static final Vec3 LEANING = new Vec3(0.6, 0, 0.8);

    /** Facets of the mesh, nearly. */
    @Param({"1000", "5000", "10000", "100000"})
    public int facets;

    private final PlaneCut cut = new PlaneCut();
    private TriangleMesh mesh;
    private PolyhedronHull hull;
    private byte[] binary;
    private byte[] text;

    /** Makes the mesh and writes its files to memory. */
    @Setup
    public void prepare() {
        mesh = OvalRing.of(facets);
        hull = new PolyhedronHull(mesh, 0);
        ByteBuffer written = StlWriter.binary(mesh, "oval ring", MILLIMETRE);
        binary = new byte[written.remaining()];
        written.get(binary);
        text = StlWriter.ascii(mesh, "oval ring", MILLIMETRE);
    }

    /** Volume, area, centroid and second moments. */
    @Benchmark
    public MassProperties massProperties() {
        return MassProperties.of(mesh);
    }

    /** Volume, moments and water plane below a leaning plane through the middle; m3. */
    @Benchmark
    public double clip() {
        hull.cut(0.6, 0, 0.8, 0, cut);
        return cut.volume;
    }

    /** How deep it lies, held leaning, at 0.9 of the density of the water; m. */
    @Benchmark
    public double draft() {
        return Draft.of(hull, LEANING, RATIO * hull.volume()).draft();
    }

    /** The tree that a hull is cut through, and the sums over it. */
    @Benchmark
    public PolyhedronHull hull() {
        return new PolyhedronHull(mesh, 0);
    }

    /** What is left at every depth from all faces. */
    @Benchmark
    public DepthProfile depthProfile() {
        return MeshDepth.of(mesh, false, false);
    }

    /** All stable attitudes at 0.9 of the density of the water. */
    @Benchmark
    public List<Attitude> attitudes() {
        return Attitudes.find(hull, hull.centroid(), RATIO);
    }

    /** A binary STL read, checked and measured. */
    @Benchmark
    public MeshReader.Reading readBinary() {
        return MeshReader.read(ByteBuffer.wrap(binary), "ring.stl", Unit.MILLIMETRE);
    }

    /** The same mesh as text. */
    @Benchmark
    public MeshReader.Reading readText() {
        return MeshReader.read(ByteBuffer.wrap(text), "ring.stl", Unit.MILLIMETRE);
    }
}
