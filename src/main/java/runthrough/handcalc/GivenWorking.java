package runthrough.handcalc;

import runthrough.plant.Catenary;
import runthrough.plant.Coil;
import runthrough.plant.CoilSize;
import runthrough.plant.StorageForm;
import runthrough.quantity.Kind;
import runthrough.quantity.Numbers;

/** Works out what the line gives: strip on a coil, strip in the accumulator. */
final class GivenWorking {
    private final Sheet sheet;

    GivenWorking(Sheet sheet) {
        this.sheet = sheet;
    }

    /**
     * The usable strip L of a coil.
     *
     * @param extraPasses mean number of rejects at a coil change; each costs the crops once more
     */
    Term usable(Coil coil, double extraPasses, double usable) {
        Term headCrop = length("c_h", "head crop", coil.headCrop());
        Term tailCrop = length("c_t", "tail crop", coil.tailCrop());
        Sum sum = new Sum();
        size(coil, sum);
        if (coil.headCrop() + coil.tailCrop() > 0) {
            sum.minus("({} + {})", headCrop, tailCrop);
            if (extraPasses > 0) {
                Term passes = new Term("n_r", "rejects per coil change", extraPasses, Kind.SHARE);
                sum.minus("{} * ({} + {})", passes, headCrop, tailCrop);
            }
        }
        return sheet.step(length("L", "usable strip of a coil", usable), sum);
    }

    private void size(Coil coil, Sum sum) {
        Term thickness = new Term("t", "strip thickness", coil.thickness(), Kind.THICKNESS);
        if (coil.size() instanceof CoilSize.ByDiameters size) {
            Term outer = new Term("D_o", "outer diameter", size.outer(), Kind.DIAMETER);
            Term inner = new Term("D_i", "inner diameter", size.inner(), Kind.DIAMETER);
            String factor = size.windingFactor() == 1 ? "" : Numbers.plain(size.windingFactor()) + " * ";
            sum.plus(factor + "pi * ({}^2 - {}^2) / (4 * {})", outer, inner, thickness);
        } else if (coil.size() instanceof CoilSize.ByMass size) {
            Term mass = new Term("m", "coil mass", size.mass().mean(), Kind.MASS);
            Term density = new Term("rho", "density", coil.density(), Kind.DENSITY);
            Term width = new Term("w", "strip width", coil.width(), Kind.WIDTH);
            sum.plus("{} / ({} * {} * {})", mass, density, width, thickness);
        } else {
            sum.plus("{}", length("L_0", "coil length", coil.meanLength()));
        }
    }

    /** The capacity C of an accumulator. */
    Term capacity(StorageForm form) {
        Term capacity = length("C", "accumulator capacity", form.capacity());
        if (form instanceof StorageForm.Strands strands) {
            return sheet.step(capacity, strands.strands() + " * {}", length("s", "stroke", strands.stroke()));
        } else if (form instanceof StorageForm.FreeLoop loop) {
            return sheet.step(
                    capacity,
                    loop.loops() + " * ({} - {})",
                    length("b_full", "strip in a full loop", Catenary.arc(loop.span(), loop.greatestSag())),
                    length("b_empty", "strip in an empty loop", Catenary.arc(loop.span(), loop.leastSag())));
        } else if (form instanceof StorageForm.Spiral spiral) {
            return sheet.step(
                    capacity,
                    Numbers.plain(spiral.wraps()) + " * pi * ({} - {})",
                    new Term("D_full", "mean diameter of a full wrap", spiral.fullDiameter(), Kind.DIAMETER),
                    new Term("D_empty", "mean diameter of an empty wrap", spiral.emptyDiameter(), Kind.DIAMETER));
        }
        return sheet.given(capacity.symbol(), capacity.name(), capacity.value(), capacity.kind());
    }

    private static Term length(String symbol, String name, double value) {
        return new Term(symbol, name, value, Kind.LENGTH);
    }
}
