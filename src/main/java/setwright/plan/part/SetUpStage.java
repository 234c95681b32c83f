package setwright.plan.part;

import java.util.List;
import setwright.geometry.Body;
import setwright.geometry.Stock;

/**
 * One set-up on the table: X along the table, Y to the column, Z up; zero at the middle of the table top.
 *
 * @param heights where the part sits
 * @param fixtures everything that stands there besides the part, each body named
 * @param start the largest blank as it is put in
 */
public record SetUpStage(
        String setUp, Heights heights, List<Body> fixtures, Stock start, List<OperationStage> operations) {
    public SetUpStage {
        fixtures = List.copyOf(fixtures);
        operations = List.copyOf(operations);
    }
}
