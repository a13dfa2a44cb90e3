namespace LiveHeat.Screens.Heats;

/// <summary>The lanes that may be compared, by place.</summary>
/// <param name="Title">The division's name.</param>
/// <param name="Lanes">By place, ties by lane; teams without a place last.</param>
public sealed record OrderGroup(string Title, IReadOnlyList<LaneView> Lanes);

/// <summary>The live order, group by group: only lanes with the same prescription are compared.</summary>
public static class LiveOrderView
{
    /// <summary>Groups in the order in which they stand on the floor.</summary>
    public static IReadOnlyList<OrderGroup> Of(IEnumerable<LaneView> lanes) =>
        [.. lanes.GroupBy(lane => lane.Sheet.Group).OrderBy(group => group.Min(lane => lane.Lane))
            .Select(group => new OrderGroup(
                string.Join(", ", group.Select(lane => lane.Sheet.DivisionName).Distinct()),
                [.. group.OrderBy(lane => lane.State.Place ?? int.MaxValue).ThenBy(lane => lane.Lane)]))];
}
