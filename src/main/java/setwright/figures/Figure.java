package setwright.figures;

import java.util.List;
import setwright.quantity.UnitSystem;
import setwright.shop.Shop;

/**
 * One small question.
 *
 * @param name as it is asked for; a contract with scripts
 * @param sentence with a blank in braces for every input that has to be given
 * @param answers their names, with their units
 */
public record Figure(String name, String sentence, List<Input> inputs, List<String> answers, Work work) {
    public Figure {
        inputs = List.copyOf(inputs);
        answers = List.copyOf(answers);
    }

    /** How the answers follow from the inputs. */
    @FunctionalInterface
    public interface Work {
        Answered answer(Asked asked);
    }

    /** The inputs as read, and the answers. */
    public record Reply(Figure figure, Asked asked, Answered answered) {}

    /** @throws Refusal where the question cannot be answered as it stands */
    public Reply ask(Question question, UnitSystem units, Shop shop) {
        Asked asked = Asked.of(question, inputs, units, shop);
        try {
            return new Reply(this, asked, work.answer(asked).checked());
        } catch (Refusal refusal) {
            throw refusal;
        } catch (IllegalArgumentException | ArithmeticException outside) {
            throw new Refusal(name + ": " + outside.getMessage());
        }
    }
}
