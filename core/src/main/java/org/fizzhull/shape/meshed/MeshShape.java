package org.fizzhull.shape.meshed;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.ChordError;
import org.fizzhull.mesh.MassProperties;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.Silhouette;
import org.fizzhull.mesh.reading.LikelyUnits;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.FileName;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.SizeCheck;
import org.jspecify.annotations.Nullable;

/**
 * The body of a closed triangle mesh, in the axes of its file: z up, moved so that the lowest point is at height 0 and
 * the box around it stands over the origin. Volume, surface and centroid are exact for the mesh. Closed hollows count
 * as surface, and their air is not counted as lift, which a notice says. An open hollow on top makes it a boat, as a
 * bowl is.
 */
public final class MeshShape implements Shape {
    private static final long serialVersionUID = 1;

    private final String file;
    private final String unit;

    /** Whether it is what fills the hollow of the body in the file. */
    private final boolean fills;

    private final PolyhedronHull hull;
    private final ChordError chords;
    private final Extents extents;
    private final double planArea;
    private final RestingAttitude rest;
    private final MeshProfiles profiles;
    private final Optional<Hollow> hollow;
    private final Optional<TriangleMesh> filling;
    private final List<Notice> notices;

    private MeshShape(
            String file, String unit, boolean fills, TriangleMesh mesh, Extents extents, @Nullable MeshProfiles known) {
        this.file = file;
        this.unit = unit;
        this.fills = fills;
        this.chords = ChordError.of(mesh);
        this.hull = new PolyhedronHull(
                mesh, chords.spread() / MassProperties.of(mesh).volume());
        this.extents = extents;
        this.planArea = Silhouette.area(mesh);
        this.rest = RestingAttitude.of(hull, planArea);
        MeshHollow found = MeshHollow.of(hull);
        this.hollow = found.hollow();
        this.profiles = known != null ? known : measured(hull, found);
        List<Notice> said = new ArrayList<>(
                MeshNotices.of(mesh, hull.volume(), chords, profiles.all().relativeError()));
        said.addAll(found.notices());
        this.filling = fills ? Optional.empty() : MouldFilling.of(mesh, found.open());
        filling.filter(one -> MouldFilling.likely(one, hull.volume()))
                .ifPresent(one -> said.add(MouldFilling.asks(one, text(false), text(true))));
        this.notices = List.copyOf(said);
    }

    private static MeshProfiles measured(PolyhedronHull hull, MeshHollow found) {
        MeshProfiles profiles = MeshProfiles.of(hull.tree());
        return found.outside().map(profiles::boat).orElse(profiles);
    }

    /**
     * {@return the shape of a mesh, its depth profiles measured now}
     *
     * @param file name of the file, only for shape text
     * @param unit of the file as shape text writes it, {@code mm} for example, only for shape text
     * @param mesh closed, facing outward, m
     */
    public static MeshShape of(String file, String unit, TriangleMesh mesh) {
        return make(file, unit, false, mesh, null);
    }

    /**
     * {@return the same with profiles measured before, on this mesh wherever it stood}
     *
     * @param file name of the file, only for shape text
     * @param unit of the file as shape text writes it, only for shape text
     * @param mesh closed, facing outward, m
     * @param profiles its depth profiles, measured before
     */
    public static MeshShape of(String file, String unit, TriangleMesh mesh, MeshProfiles profiles) {
        return make(file, unit, false, mesh, profiles);
    }

    private static MeshShape make(
            String file, String unit, boolean fills, TriangleMesh mesh, @Nullable MeshProfiles profiles) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int v = 0; v < mesh.vertexCount(); v++) {
            for (int k = 0; k < 3; k++) {
                low[k] = Math.min(low[k], mesh.at(v, k));
                high[k] = Math.max(high[k], mesh.at(v, k));
            }
        }
        Extents extents = new Extents(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
        refuseSize(Math.max(extents.length(), Math.max(extents.width(), extents.height())), unit);
        double[] shift = {-(low[0] + high[0]) / 2, -(low[1] + high[1]) / 2, -low[2]};
        return new MeshShape(FileName.checked(file), unit, fills, moved(mesh, shift), extents, profiles);
    }

    /** A body of a wrong size is one in another unit. */
    private static void refuseSize(double longest, String unit) {
        if (longest >= SizeCheck.SMALLEST && longest <= SizeCheck.LARGEST) {
            return;
        }
        String others = "";
        for (Unit known : Unit.values()) {
            others = known.dimension() == Dimension.LENGTH && known.names().contains(unit)
                    ? LikelyUnits.of(longest, known.toSi(1))
                    : others;
        }
        throw new Refusal(
                "out-of-range",
                SizeCheck.field("unit"),
                unit + ", that is a body of " + LikelyUnits.rounded(longest) + " mm",
                "5 mm to 1000 mm",
                others.isEmpty() ? "In no usual unit would it be 10 to 300 mm: is this the right file?" : others);
    }

    private static TriangleMesh moved(TriangleMesh mesh, double[] shift) {
        double[] xyz = new double[3 * mesh.vertexCount()];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = mesh.at(i / 3, i % 3) + shift[i % 3];
        }
        int[] corners = new int[3 * mesh.facetCount()];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = mesh.corner(i / 3, i % 3);
        }
        return new TriangleMesh(xyz, corners);
    }

    private MeshShape(MeshShape of, List<Notice> found) {
        this.file = of.file;
        this.unit = of.unit;
        this.fills = of.fills;
        this.filling = of.filling;
        this.hull = of.hull;
        this.chords = of.chords;
        this.extents = of.extents;
        this.planArea = of.planArea;
        this.rest = of.rest;
        this.profiles = of.profiles;
        this.hollow = of.hollow;
        List<Notice> both = new ArrayList<>(found);
        both.addAll(of.notices);
        this.notices = List.copyOf(both);
    }

    /** Written are the mesh and its measured profiles, which cost most; the rest is worked out again. */
    private Object writeReplace() {
        return new Written(file, unit, fills, hull.mesh(), extents, profiles, notices);
    }

    private record Written(
            String file,
            String unit,
            boolean fills,
            TriangleMesh mesh,
            Extents extents,
            MeshProfiles profiles,
            List<Notice> notices)
            implements Serializable {
        private Object readResolve() {
            MeshShape shape = new MeshShape(file, unit, fills, mesh, extents, profiles);
            return shape.with(notices.subList(0, notices.size() - shape.notices.size()));
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MeshShape that
                && text().equals(that.text())
                && hull.mesh().equals(that.hull.mesh())
                && notices.equals(that.notices);
    }

    @Override
    public int hashCode() {
        return hull.mesh().hashCode();
    }

    /**
     * {@return the same shape with what was found when its file was read}
     *
     * @param found notices of the reader and of the repair, in the order in which they are told
     */
    public MeshShape with(List<Notice> found) {
        return new MeshShape(this, found);
    }

    /**
     * {@return what fills the largest hollow of this body up to its rim, as a shape of its own: the piece, where the
     * file is the mould}
     */
    public MeshShape filling() {
        TriangleMesh piece = filling.orElseThrow(() -> new Refusal(
                "no-hollow",
                SizeCheck.field("piece"),
                "hollow",
                "body",
                "The body has no hollow that is closed, or open to the top or to the bottom as it lies."));
        return make(file, unit, true, piece, null);
    }

    @Override
    public List<Notice> notices() {
        return notices;
    }

    /** {@return the mesh in the body frame} */
    public TriangleMesh mesh() {
        return hull.mesh();
    }

    /** {@return how far its facets lie from the round surface they seem to follow} */
    public ChordError chords() {
        return chords;
    }

    /** {@return the volume, area, centroid and second moments} */
    public MassProperties properties() {
        return hull.properties();
    }

    @Override
    public String kind() {
        return "mesh";
    }

    @Override
    public String text() {
        return text(fills);
    }

    private String text(boolean hollow) {
        return "mesh(file=\"" + file + "\", unit=" + unit + (hollow ? ", piece=hollow)" : ")");
    }

    @Override
    public double volume() {
        return hull.volume();
    }

    @Override
    public double surface() {
        return properties().area();
    }

    @Override
    public Vec3 centroid() {
        return hull.centroid();
    }

    @Override
    public Extents extents() {
        return extents;
    }

    /** Exact where no vertical line passes through material twice, else to about 1e-5. */
    @Override
    public RestingAttitude restingAttitude() {
        return rest;
    }

    @Override
    public double planArea() {
        return planArea;
    }

    /** To 0.5 % in volume and 1 % in area over the first 90 % of the volume, unless the profile says otherwise. */
    @Override
    public DepthProfile depthProfile(Exposure exposure) {
        return profiles.of(exposure);
    }

    @Override
    public Optional<Hollow> hollow() {
        return hollow;
    }

    @Override
    public Optional<Hull> hull() {
        return Optional.of(hull);
    }
}
