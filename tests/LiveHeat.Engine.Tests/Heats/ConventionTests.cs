using System.Reflection;
using LiveHeat.Contracts.Wire;
using LiveHeat.Engine.Rules;
using LiveHeat.Testing;

namespace LiveHeat.Engine.Heats;

public class ConventionTests
{
    private static readonly IReadOnlyList<Type> Facts = Cases(typeof(HeatFact));
    private static readonly IReadOnlyList<Type> Commands = Cases(typeof(HeatCommand));

    private static IReadOnlyList<Type> Cases(Type family) => [.. family.Assembly.GetTypes().Where(type => type.IsSubclassOf(family) && !type.IsAbstract)];

    [Fact]
    public void Facts_and_commands_are_closed_families_of_sealed_cases()
    {
        Assert.True(Facts.Count > 40 && Commands.Count > 30);
        Assert.All(Facts.Concat(Commands), type => Assert.True(type.IsSealed, $"{type.Name} is not sealed."));
        Assert.All(Cases(typeof(HeatFact)).Concat(Commands).Select(type => type.BaseType!).Distinct(), family =>
            Assert.All(family.GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic).Where(made => made.GetParameters().Length == 0),
                made => Assert.True(made.IsPrivate || made.IsFamilyAndAssembly, $"Anybody can add a case to {family.Name}.")));
    }

    [Fact]
    public void Every_fact_and_command_has_one_wire_name_in_kebab_case()
    {
        Assert.Equal(Facts.ToHashSet(), WireNames.Facts.Select(pair => pair.Type).ToHashSet());
        Assert.Equal(Commands.ToHashSet(), WireNames.Commands.Select(pair => pair.Type).ToHashSet());
        Assert.Equal(Cases(typeof(Workouts.RelayOrder)).ToHashSet(), WireNames.Orders.Select(pair => pair.Type).ToHashSet());
        foreach (var table in new[] { WireNames.Facts, WireNames.Commands, WireNames.Orders })
        {
            Assert.Equal(table.Count, table.Select(pair => pair.Type).Distinct().Count());
            Assert.Equal(table.Count, table.Select(pair => pair.Name).Distinct().Count());
            Assert.All(table, pair => Assert.Matches("^[a-z]+(-[a-z]+)*$", pair.Name));
        }
    }

    [Fact]
    public void Every_fact_folds_wherever_it_comes()
    {
        // Before the call, before GO, in the heat, and after it; with a lane, a step and a target that exist or not.
        Assert.Equal(Facts.ToHashSet(), Examples.Facts.Select(fact => fact.GetType()).ToHashSet());
        foreach (var score in new[] { "", "start", "start\nlane 1 step 1 done at 0:40\nend at 10:00\nfreeze at 11:00" })
        {
            foreach (var fact in Examples.Facts)
            {
                var called = new HeatScript().Then(score);
                called.Append(fact);
                Assert.Equal(fact, called.Entries[^1].Fact);

                var planned = new HeatScript(called: false);
                planned.Append(fact);
                Assert.Equal(1, planned.State.Head);
            }
        }
    }

    [Fact]
    public void Every_command_has_a_rule_and_a_permission()
    {
        Assert.Equal(Commands.ToHashSet(), Examples.Commands.Select(command => command.GetType()).ToHashSet());
        var heat = new HeatScript().State;
        foreach (var command in Examples.Commands)
        {
            Assert.NotNull(HeatRules.Decide(heat, command, Some.Asking(Some.Organiser, Some.Go, setup: Some.Snapshot())));
            Assert.IsType<Verdict.Refused>(HeatRules.Decide(heat, command, Some.Asking(new By("v", "Vi", Role.Viewer), Some.Go)));
        }
    }

    [Fact]
    public void The_engine_references_nothing_but_the_platform() =>
        Assert.All(typeof(HeatState).Assembly.GetReferencedAssemblies(), reference =>
            Assert.True(reference.Name!.StartsWith("System", StringComparison.Ordinal), $"The engine references {reference.Name}."));

    [Fact]
    public void Everything_in_the_state_compares_by_value()
    {
        // A list that compares by reference would make two equal heats differ.
        var seen = new HashSet<Type>();
        void Check(Type type, string path)
        {
            if (!seen.Add(type) || type.Assembly != typeof(HeatState).Assembly)
            {
                return;
            }

            foreach (var property in type.GetProperties(BindingFlags.Instance | BindingFlags.Public).Where(property => property.Name != "Entries" && property.GetIndexParameters().Length == 0))
            {
                var holds = property.PropertyType;
                Assert.False(holds != typeof(string) && typeof(System.Collections.IEnumerable).IsAssignableFrom(holds) && !holds.Name.StartsWith("Items", StringComparison.Ordinal),
                    $"{path}.{property.Name} is a {holds.Name}.");
                foreach (var inner in holds.GetGenericArguments().Append(holds))
                {
                    Check(inner, $"{path}.{property.Name}");
                }
            }
        }

        Check(typeof(HeatState), "HeatState");
        Assert.All(Facts, type => Check(type, type.Name));
        Assert.Contains(typeof(LaneState), seen);
    }
}
