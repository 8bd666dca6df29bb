package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.quantity.Given;

/** Writes a mesh as STL bytes, coordinates rounded to float32. */
public final class StlWriter {
    private StlWriter() {}

    /**
     * {@return binary STL; the buffer stands at its start}
     *
     * @param mesh the mesh, m
     * @param header text of the header; ASCII, cut after 80 characters, not beginning with {@code solid}
     * @param metresPerUnit length of one unit of the file, m
     */
    public static ByteBuffer binary(TriangleMesh mesh, String header, double metresPerUnit) {
        Given.all("header", header);
        Given.finite("metres per unit", metresPerUnit);
        ByteBuffer bytes = ByteBuffer.allocate(
                        Math.addExact(StlBinary.HEADER, Math.multiplyExact(StlBinary.FACET, mesh.facetCount())))
                .order(ByteOrder.LITTLE_ENDIAN);
        byte[] name = header.getBytes(StandardCharsets.US_ASCII);
        bytes.put(name, 0, Math.min(80, name.length)).putInt(80, mesh.facetCount());
        for (int f = 0; f < mesh.facetCount(); f++) {
            int at = StlBinary.HEADER + StlBinary.FACET * f;
            double[] normal = normal(mesh, f);
            for (int axis = 0; axis < 3; axis++) {
                bytes.putFloat(at + 4 * axis, (float) normal[axis]);
                for (int corner = 0; corner < 3; corner++) {
                    bytes.putFloat(at + 12 + 12 * corner + 4 * axis, unit(mesh, f, corner, axis, metresPerUnit));
                }
            }
        }
        return bytes.rewind();
    }

    /**
     * {@return ASCII STL with one {@code solid}; lines end with LF}
     *
     * @param mesh the mesh, m
     * @param name name of the solid, on one line
     * @param metresPerUnit length of one unit of the file, m
     */
    public static byte[] ascii(TriangleMesh mesh, String name, double metresPerUnit) {
        Given.all("name", name);
        Given.finite("metres per unit", metresPerUnit);
        StringBuilder text = new StringBuilder(260 * mesh.facetCount() + 64);
        text.append("solid ").append(name).append('\n');
        for (int f = 0; f < mesh.facetCount(); f++) {
            double[] normal = normal(mesh, f);
            text.append("  facet normal ").append((float) normal[0]).append(' ');
            text.append((float) normal[1]).append(' ').append((float) normal[2]).append("\n    outer loop\n");
            for (int corner = 0; corner < 3; corner++) {
                text.append("      vertex");
                for (int axis = 0; axis < 3; axis++) {
                    text.append(' ').append(unit(mesh, f, corner, axis, metresPerUnit));
                }
                text.append('\n');
            }
            text.append("    endloop\n  endfacet\n");
        }
        return text.append("endsolid ").append(name).append('\n').toString().getBytes(StandardCharsets.UTF_8);
    }

    private static float unit(TriangleMesh mesh, int facet, int corner, int axis, double metresPerUnit) {
        return (float) (mesh.at(mesh.corner(facet, corner), axis) / metresPerUnit);
    }

    /** Unit normal of a facet; zero where it has no area. */
    private static double[] normal(TriangleMesh mesh, int facet) {
        Vec3 doubled = FaceSets.doubled(mesh, facet);
        Vec3 unit = doubled.norm() > 0 ? doubled.unit() : doubled;
        return new double[] {unit.x(), unit.y(), unit.z()};
    }
}
