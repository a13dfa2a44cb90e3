namespace LiveHeat.Engine;

/// <summary>
/// Something to be told to people, in no language: which sentence, and what stands in its places. The engine says what is so; whoever answers a person makes the
/// sentence, in that person's language. Equal tellings say the same.
/// </summary>
/// <param name="Words">The class whose member made it; the sentences are in the resources of its name. Null for several sentences, one after the other.</param>
/// <param name="Key">The member's name, and the sentence's in the resources.</param>
/// <param name="Parts">For the places {0}, {1} and so on.</param>
/// <param name="Counts">Whether part 0 is a whole number that the sentence's form goes by (.one, .other).</param>
public sealed record Telling(Type? Words, string Key, Items<Part> Parts, bool Counts = false)
{
    /// <summary>Sentences one after the other.</summary>
    public static Telling Several(IEnumerable<Telling> sentences) => new(null, "", sentences.Select(Part (sentence) => new Part.Told(sentence)).ToItems());
}
