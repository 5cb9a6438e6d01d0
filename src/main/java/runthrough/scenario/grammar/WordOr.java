package runthrough.scenario.grammar;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import runthrough.plant.check.StandIn;
import runthrough.scenario.source.Raw;

/**
 * Either a fixed word or something larger.
 *
 * @param word that stands for {@code meaning}
 * @param meaning of the word
 * @param other what it may be otherwise
 */
public record WordOr<T>(String word, T meaning, Shape<T> other) implements Shape<T> {

    @Override
    public Optional<T> read(Raw raw, Context context) {
        if (raw instanceof Raw.Scalar scalar) {
            if (scalar.text().strip().equals(word)) {
                return Optional.of(meaning);
            }
            context.wrongShape(raw, allowed());
            return Optional.empty();
        }
        return other.read(raw, context);
    }

    @Override
    public Optional<T> standIn(Raw raw, StandIn standIn) {
        return raw instanceof Raw.Scalar ? Optional.empty() : other.standIn(raw, standIn);
    }

    @Override
    public String allowed() {
        return other.allowed() + ", or the word " + word;
    }

    @Override
    public ObjectNode schema(Schemas schemas) {
        ObjectNode fixed = schemas.any();
        fixed.putArray("enum").add(word);
        return schemas.anyOf(fixed, other.schema(schemas));
    }

    /** Instead of the word, something larger may be put there part by part. */
    @Override
    public List<Part> parts(Optional<Raw> written) {
        return other.parts(written.filter(raw -> !(raw instanceof Raw.Scalar)));
    }

    @Override
    public List<Section> sections() {
        return other.sections();
    }
}
