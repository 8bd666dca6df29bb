package org.fizzhull.shape.meshed;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Exposure;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.ChordError;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.mesh.repair.LikelyUnits;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.body.MeshHollow;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.size.FileName;
import org.fizzhull.shape.size.SizeCheck;
import org.fizzhull.uncertainty.Workers;
import org.jspecify.annotations.Nullable;

/**
 * The body of a closed triangle mesh, in the axes of its file: z up, moved so that the lowest point is at height 0 and
 * the box around it stands over the origin. Volume, surface and centroid are exact for the mesh. Closed hollows count
 * as surface, and their air is not counted as lift, which a notice says. An open hollow on top makes it a boat, as a
 * bowl is.
 * <pre>{@code
 * TriangleMesh mesh = ...;   // closed, facing outward, m: from mesh.reading and mesh.repair
 * MeshShape shape = MeshShape.of("shell.stl", "mm", mesh);
 * double gramsOfWater = inGrams(998 * shape.volume());
 * }</pre>
 *
 * <p>Range: longest side 5 mm to 1 m; the mesh must be closed and face outward, which the readers check. Error: {@link
 * ChordError} against the round surface that the facets follow; depth profiles 0.5 %. Cost: some tenths of a second when
 * it is made, most of it for the depth profiles; afterwards none. Immutable, safe for use by several threads. Reading
 * of files: {@code mesh.reading}; the file itself is not opened here.
 */
public final class MeshShape implements Shape {
    private static final long serialVersionUID = 1;

    /** Name of the file, for shape text only. */
    private final String file;
    /** Unit of the file as shape text writes it. */
    private final String unit;

    /** Whether it is what fills the hollow of the body in the file. */
    private final boolean fills;

    /** What was measured of the mesh. */
    private final Form form;

    /** Notices: what was found in the file first, then those about the form. */
    private final List<Notice> notices;

    /**
     * What is measured of a mesh.
     *
     * @param hull the mesh as a hull, in the body frame
     * @param extents box around it, m
     * @param planArea area of the shadow along z, m2
     * @param rest how it lies when it was not placed by hand
     * @param profiles what is left at each depth, by exposure
     * @param hollow the hollow that makes it a boat
     * @param filling what fills its largest hollow; empty where there is none, and for a filling itself
     */
    private record Form(
            PolyhedronHull hull,
            Extents extents,
            double planArea,
            RestingAttitude rest,
            MeshProfiles profiles,
            Optional<Hollow> hollow,
            Optional<TriangleMesh> filling) {}

    /** Measures a mesh that stands in the body frame; {@code known} are profiles measured before, or null. */
    private MeshShape(
            String file,
            String unit,
            boolean fills,
            TriangleMesh mesh,
            Extents extents,
            @Nullable MeshProfiles known,
            Workers workers) {
        this.file = file;
        this.unit = unit;
        this.fills = fills;
        MeshMeasurements found = new MeshMeasurements(mesh, workers);
        PolyhedronHull hull = new PolyhedronHull(found.tree(), found.chords());
        RestingAttitude rest = RestingAttitude.of(hull, found.shadow());
        MeshHollow open = MeshHollow.of(hull, found.hollows());
        MeshProfiles profiles = known != null ? known : measured(hull, rest, open, workers);
        Optional<TriangleMesh> filling = fills ? Optional.empty() : MouldFilling.of(mesh, open.open());
        form = new Form(hull, extents, found.shadow(), rest, profiles, open.hollow(), filling);
        // notices on facets, then on hollows, then the question whether the file is the mould
        List<Notice> said = new ArrayList<>(MeshNotices.of(
                mesh, hull.volume(), found.chords(), profiles.all().relativeError()));
        said.addAll(open.notices());
        filling.filter(one -> MouldFilling.likely(one, hull.volume()))
                .ifPresent(one -> said.add(
                        MouldFilling.asks(one, MouldFilling.below(mesh, open.open()), text(false), text(true))));
        this.notices = List.copyOf(said);
    }

    /** The profiles, of a boat with what is left from outside. */
    private static MeshProfiles measured(PolyhedronHull hull, RestingAttitude rest, MeshHollow found, Workers workers) {
        MeshProfiles profiles = MeshProfiles.of(hull, rest, workers);
        return found.outside().map(profiles::boat).orElse(profiles);
    }

    /**
     * {@return the shape of a mesh, its depth profiles measured now}
     *
     * @param file name of the file, only for shape text
     * @param unit of the file as shape text writes it, {@code mm} for example, only for shape text
     * @param mesh closed, facing outward, m
     * @throws Refusal {@code out-of-range} for a body beyond 5 mm to 1000 mm, {@code bad-file-name} for a name that
     *     shape text cannot carry
     */
    public static MeshShape of(String file, String unit, TriangleMesh mesh) {
        Given.all("unit", unit);
        return of(file, unit, mesh, Workers.CALLER);
    }

    /**
     * {@return the same, measured by some workers; the answer does not depend on them}
     *
     * @param file name of the file, only for shape text
     * @param unit of the file as shape text writes it, only for shape text
     * @param mesh closed, facing outward, m
     * @param workers what runs the parts of the work
     * @throws Refusal as {@link #of(String, String, TriangleMesh)}
     */
    public static MeshShape of(String file, String unit, TriangleMesh mesh, Workers workers) {
        Given.all("unit", unit);
        return make(file, unit, false, mesh, null, workers);
    }

    /**
     * {@return the same with profiles measured before, on this mesh wherever it stood}
     *
     * @param file name of the file, only for shape text
     * @param unit of the file as shape text writes it, only for shape text
     * @param mesh closed, facing outward, m
     * @param profiles its depth profile for each exposure, measured before
     * @throws Refusal as {@link #of(String, String, TriangleMesh)}
     */
    public static MeshShape of(String file, String unit, TriangleMesh mesh, Function<Exposure, DepthProfile> profiles) {
        Given.all("unit, profiles", unit, profiles);
        return of(
                file,
                unit,
                mesh,
                new MeshProfiles(
                        profiles.apply(Exposure.ALL), profiles.apply(Exposure.TRAY), profiles.apply(Exposure.OUTSIDE)));
    }

    /** The same with profiles as they are kept. */
    static MeshShape of(String file, String unit, TriangleMesh mesh, MeshProfiles profiles) {
        Given.all("unit, profiles", unit, profiles);
        return make(file, unit, false, mesh, profiles, Workers.CALLER);
    }

    /** Moves the mesh into the body frame and makes the shape. */
    private static MeshShape make(
            String file,
            String unit,
            boolean fills,
            TriangleMesh mesh,
            @Nullable MeshProfiles profiles,
            Workers workers) {
        // least and largest x, y, z; the box goes over the origin, its lowest point to height 0
        double[] box = mesh.box();
        Extents extents = new Extents(box[3] - box[0], box[4] - box[1], box[5] - box[2]);
        refuseSize(Math.max(extents.length(), Math.max(extents.width(), extents.height())), unit);
        double[][] turn = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
        double[] shift = {-(box[0] + box[3]) / 2, -(box[1] + box[4]) / 2, -box[2]};
        return new MeshShape(FileName.checked(file), unit, fills, mesh.moved(turn, shift), extents, profiles, workers);
    }

    /**
     * Refuses a longest side, m, that no piece has, with the units in which it would be one: a body of a wrong size is
     * one in another unit.
     */
    private static void refuseSize(double longest, String unit) {
        if (longest >= SizeCheck.SMALLEST && longest <= SizeCheck.LARGEST) {
            return;
        }
        // the units in which a body so long would be a piece
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

    /** The same shape with more notices, before its own. */
    private MeshShape(MeshShape of, List<Notice> found) {
        this.file = of.file;
        this.unit = of.unit;
        this.fills = of.fills;
        this.form = of.form;
        List<Notice> both = new ArrayList<>(found);
        both.addAll(of.notices);
        this.notices = List.copyOf(both);
    }

    /** Written are the mesh and its measured profiles, which cost most; the rest is worked out again. */
    private Object writeReplace() {
        return new Written(file, unit, fills, mesh(), form.extents, form.profiles, notices);
    }

    /** Serial form: the mesh, its profiles, and the notices, those of the file in front. */
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
            // the shape finds its own notices again; those of the file are what stands before them
            MeshShape shape = new MeshShape(file, unit, fills, mesh, extents, profiles, Workers.CALLER);
            return shape.with(notices.subList(0, notices.size() - shape.notices.size()));
        }
    }

    /** Equal are shapes of the same text, mesh and notices; measured profiles do not count. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MeshShape that
                && text().equals(that.text())
                && mesh().equals(that.mesh())
                && notices.equals(that.notices);
    }

    @Override
    public int hashCode() {
        return mesh().hashCode();
    }

    /**
     * {@return the same shape with what was found when its file was read}
     *
     * @param found notices of the reader and of the repair, in the order in which they are reported
     */
    public MeshShape with(List<Notice> found) {
        return new MeshShape(this, found);
    }

    /**
     * {@return what fills the largest hollow of this body up to its rim, as a shape of its own: the piece, where the
     * file is the mould} Measured anew at each call.
     *
     * @throws Refusal {@code no-hollow} where there is none, {@code out-of-range} where it is too small for a piece
     */
    public MeshShape filling() {
        TriangleMesh piece = form.filling.orElseThrow(() -> new Refusal(
                "no-hollow",
                SizeCheck.field("piece"),
                "hollow",
                "body",
                "The body has no hollow that is closed, or open to the top or to the bottom as it lies."));
        return make(file, unit, true, piece, null, Workers.CALLER);
    }

    @Override
    public List<Notice> notices() {
        return notices;
    }

    /** {@return the mesh in the body frame} */
    public TriangleMesh mesh() {
        return form.hull.mesh();
    }

    /** {@return the volume, area, centroid and second moments} */
    MassProperties properties() {
        return form.hull.properties();
    }

    @Override
    public String kind() {
        return "mesh";
    }

    @Override
    public String text() {
        return text(fills);
    }

    /** Shape text of the body, or of what fills its hollow. */
    private String text(boolean hollow) {
        return "mesh(file=\"" + file + "\", unit=" + unit + (hollow ? ", piece=hollow)" : ")");
    }

    @Override
    public double volume() {
        return form.hull.volume();
    }

    @Override
    public double surface() {
        return properties().area();
    }

    @Override
    public Vec3 centroid() {
        return form.hull.centroid();
    }

    @Override
    public Extents extents() {
        return form.extents;
    }

    /** Exact where no vertical line passes through material twice, else to about 2e-5. */
    @Override
    public RestingAttitude restingAttitude() {
        return form.rest;
    }

    @Override
    public double planArea() {
        return form.planArea;
    }

    /** To 0.5 % in volume and 1 % in area over the first 90 % of the volume, unless the profile says otherwise. */
    @Override
    public DepthProfile depthProfile(Exposure exposure) {
        return form.profiles.of(exposure);
    }

    @Override
    public Optional<DepthProfile> depthProfileAfloat(RestingAttitude lies) {
        if (form.hollow.isPresent()) {
            return Shape.super.depthProfileAfloat(lies);
        }
        DepthProfile afloat = form.profiles.afloat();
        return afloat.equals(form.profiles.all()) ? Optional.empty() : Optional.of(afloat);
    }

    @Override
    public Optional<Hollow> hollow() {
        return form.hollow;
    }

    @Override
    public Optional<Hull> hull() {
        return Optional.of(form.hull);
    }
}
