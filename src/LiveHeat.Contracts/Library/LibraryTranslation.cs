using LiveHeat.Engine;
using LiveHeat.Engine.Workouts;

namespace LiveHeat.Contracts.Library;

/// <summary>A translator's file: the words of the library in another language, and nothing else.</summary>
/// <param name="Language">Such as "de" (BCP 47).</param>
/// <param name="Source">What is said where English says "common practice, no source".</param>
/// <param name="Added">The faults that the program adds by itself, in the order of <see cref="LibraryFiles.Added"/>.</param>
/// <param name="Movements">All movements, in any order.</param>
public sealed record LibraryTranslation(string Language, string Source, Items<string> Added, Items<TranslatedMovement> Movements)
{
    /// <summary>The English library in these words.</summary>
    /// <exception cref="FormatException">A movement, or an item of one of its lists, is missing or too many: the sentence says which.</exception>
    public MovementLibrary Of(MovementLibrary english)
    {
        var translated = Movements.ToDictionary(movement => movement.Id);
        if (Movements.Select(movement => movement.Id).Except(english.Movements.Select(movement => movement.Id)).ToList() is [var unknown, ..])
        {
            throw new FormatException($"movements.{Language}.json: English has no {unknown}.");
        }

        return new MovementLibrary(Language, english.Movements.Select(movement => translated.TryGetValue(movement.Id, out var words)
            ? words.Of(movement, Language) with { Source = Source }
            : throw new FormatException($"movements.{Language}.json: {movement.Id} is missing.")).ToItems());
    }
}

/// <summary>The words of one movement: the i-th item of a list says what the i-th says in English.</summary>
public sealed record TranslatedMovement(
    string Id, string Name, string Start, string Finish, Items<string> Between, Items<NamedFault> Faults, Items<string> Allowed, Items<TranslatedVariant> Variants, string? Caution)
{
    internal LibraryMovement Of(LibraryMovement english, string language)
    {
        Same(Between.Count, english.Between.Count, "between");
        Same(Faults.Count, english.Faults.Count, "faults");
        Same(Allowed.Count, english.Allowed.Count, "allowed");
        Same(Variants.Count, english.Variants.Count, "variants");
        Same(Caution is null ? 0 : 1, english.Caution is null ? 0 : 1, "caution");
        return english with
        {
            Name = Name,
            Start = Start,
            Finish = Finish,
            Between = Between,
            Faults = Faults,
            Allowed = Allowed,
            Caution = Caution,
            Variants = Variants.Zip(english.Variants, (words, variant) => variant with { Name = words.Name, How = words.How }).ToItems(),
        };

        void Same(int had, int wanted, string list)
        {
            if (had != wanted)
            {
                throw new FormatException($"movements.{language}.json: {Id} has {had} in {list}, and English has {wanted}.");
            }
        }
    }
}

/// <summary>The words of a variant.</summary>
public sealed record TranslatedVariant(string Name, string How);
