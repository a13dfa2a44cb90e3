using LiveHeat.Contracts.Library;
using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;
using LiveHeat.Server.Access;

namespace LiveHeat.Server.Setup;

/// <summary>An organiser's own movement: tidied, and what cannot be in it.</summary>
internal static class MovementSetup
{
    /// <summary>Longest name of a fault: it stands on a button of a phone.</summary>
    private const int LongestFault = 28;

    public static IResult None(string id) => Problems.Of(StatusCodes.Status404NotFound, "no-such-movement", SetupRefusals.NoOwnMovement(id));

    /// <param name="movement">Tidy.</param>
    /// <param name="pictureIsKept">Whether the picture that it names is on this server.</param>
    public static IEnumerable<FieldError> Errors(LibraryMovement movement, bool pictureIsKept)
    {
        var text = SetupText.Name("name", SetupRefusals.MovementName, movement.Name)
            .Concat(StandardCheck.Errors(new Standard(movement.Start, movement.Finish, movement.Between, movement.Allowed, movement.Faults, movement.Caution)))
            .Concat(movement.Faults.SelectMany((fault, i) => fault.Name?.Length > LongestFault
                ? [new FieldError($"faults[{i}].name", SetupRefusals.FaultTooLong(fault.Name, LongestFault))]
                : Enumerable.Empty<FieldError>()))
            .Concat(Variants(movement.Variants))
            .Concat(SetupText.Text("source", SetupRefusals.Source, movement.Source))
            .Concat(movement.BasedOn is null ? [] : SetupText.Id("basedOn", movement.BasedOn))
            .Concat(movement.Picture is null || pictureIsKept ? [] : [new FieldError("picture", SetupRefusals.NoPictureHere)])
            .ToList();
        return text.Count > 0 ? text : MovementCheck.Errors(movement.ToMovement(movement.Id));
    }

    public static LibraryMovement Tidy(this LibraryMovement movement) => movement with
    {
        Name = movement.Name?.Trim()!,
        Start = movement.Start?.Trim()!,
        Finish = movement.Finish?.Trim()!,
        Source = movement.Source?.Trim()!,
        Between = Tidy(movement.Between),
        Allowed = Tidy(movement.Allowed),
        Faults = Tidy(movement.Faults),
        Variants = movement.Variants.Select(variant => variant with { Name = variant.Name?.Trim()!, How = variant.How?.Trim()! }).ToItems(),
        Caution = Tidy(movement.Caution),
    };

    public static Standard Tidy(this Standard standard) => standard with
    {
        Start = standard.Start?.Trim()!,
        Finish = standard.Finish?.Trim()!,
        Between = Tidy(standard.Between),
        Allowed = Tidy(standard.Allowed),
        Faults = Tidy(standard.Faults),
        Caution = Tidy(standard.Caution),
    };

    private static IEnumerable<FieldError> Variants(Items<ScaledVariant> variants) =>
        (variants.Count > StandardCheck.MostInList ? [new FieldError("variants", SetupRefusals.TooManyVariants(variants.Count, StandardCheck.MostInList))] : Enumerable.Empty<FieldError>())
            .Concat(variants.SelectMany((variant, i) => SetupText.Name($"variants[{i}].name", SetupRefusals.Variant, variant.Name)
                .Concat(SetupText.Text($"variants[{i}].how", SetupRefusals.VariantIs(variant.Name), variant.How))
                .Concat(variant.Movement is null ? [] : SetupText.Id($"variants[{i}].movement", variant.Movement))));

    private static Items<string> Tidy(Items<string> sentences) => sentences.Select(sentence => sentence.Trim()).ToItems();

    private static Items<NamedFault> Tidy(Items<NamedFault> faults) => faults.Select(fault => new NamedFault(fault.Name?.Trim()!, fault.How?.Trim()!)).ToItems();

    private static string? Tidy(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
