using Microsoft.EntityFrameworkCore;

namespace LiveHeat.Ledger.Facts;

/// <summary>The ledger's tables. Another database has a context of its own derived from this one, since migrations belong to one provider.</summary>
internal class LedgerContext(DbContextOptions options) : DbContext(options)
{
    internal DbSet<FactRow> Facts => Set<FactRow>();

    internal DbSet<EpochRow> Epochs => Set<EpochRow>();

    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<FactRow>(fact =>
        {
            fact.ToTable("facts");
            fact.HasKey(f => new { f.Heat, f.Sequence });
            fact.HasIndex(f => new { f.Outbox, f.Counter }).IsUnique();
            fact.Property(f => f.Heat).HasColumnName("heat");
            fact.Property(f => f.Sequence).HasColumnName("sequence").ValueGeneratedNever();
            fact.Property(f => f.Outbox).HasColumnName("outbox");
            fact.Property(f => f.Counter).HasColumnName("counter");
            fact.Property(f => f.Sender).HasColumnName("sender");
            fact.Property(f => f.ReceivedAtMs).HasColumnName("received_at_ms");
            fact.Property(f => f.BodyHash).HasColumnName("body_hash");
            fact.Property(f => f.Body).HasColumnName("body");
            fact.Property(f => f.PreviousHash).HasColumnName("previous_hash");
            fact.Property(f => f.Hash).HasColumnName("hash");
        });
        modelBuilder.Entity<EpochRow>(epoch =>
        {
            epoch.ToTable("epochs");
            epoch.HasKey(e => e.Number);
            epoch.Property(e => e.Number).HasColumnName("number").ValueGeneratedNever();
            epoch.Property(e => e.Epoch).HasColumnName("epoch");
            epoch.Property(e => e.MadeAtMs).HasColumnName("made_at_ms");
        });
    }
}
